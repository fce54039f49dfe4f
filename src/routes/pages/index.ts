import type { Route } from '../route'
import { accountRoutes } from './account'
import { afterRoutes } from './after'
import { benchPageRoutes } from './bench'
import { benchAskingRoutes } from './bench-asking'
import { benchCarriedRoutes } from './bench-carried'
import { conversationRoutes } from './conversation'
import { dayRoutes } from './day'
import { daysPageRoutes } from './days'
import { deviceRoutes } from './devices'
import { docketPageRoutes } from './docket'
import { docketDeskRoutes } from './docket-desk'
import { docketMoveRoutes } from './docket-moves'
import { handoverRoutes } from './handover'
import { inHandRoutes } from './in-hand'
import { listRoutes } from './list'
import { openRoutes } from './open'
import { outgoingRoutes } from './outgoing'
import { photoRoutes } from './photos'
import { quotePageRoutes } from './quote'
import { sendingRoutes } from './sending'
import { settingsRoutes } from './settings'
import { workSettingsRoutes } from './settings-work'
import { signInRoutes } from './sign-in'
import { siteRoutes } from './site'
import { startRoutes } from './start'

/** Every page, in the order a customer and then the studio meets them. */
export const pageRoutes: readonly Route[] = [
  ...startRoutes,
  ...conversationRoutes,
  ...photoRoutes,
  ...sendingRoutes,
  ...quotePageRoutes,
  ...afterRoutes,
  ...dayRoutes,
  ...signInRoutes,
  ...listRoutes,
  ...openRoutes,
  ...settingsRoutes,
  ...workSettingsRoutes,
  ...deviceRoutes,
  ...siteRoutes,
  ...docketPageRoutes,
  ...docketMoveRoutes,
  ...docketDeskRoutes,
  ...inHandRoutes,
  ...accountRoutes,
  ...daysPageRoutes,
  ...outgoingRoutes,
  ...benchPageRoutes,
  ...benchAskingRoutes,
  ...benchCarriedRoutes,
  ...handoverRoutes,
]

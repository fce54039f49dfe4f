import type { Route } from '../route'
import { benchPageRoutes } from './bench'
import { conversationRoutes } from './conversation'
import { docketPageRoutes } from './docket'
import { officePageRoutes } from './office'
import { quotePageRoutes } from './quote'
import { startRoutes } from './start'

/** Every page, in the order a customer and then the studio meets them. */
export const pageRoutes: readonly Route[] = [
  ...startRoutes,
  ...conversationRoutes,
  ...quotePageRoutes,
  ...officePageRoutes,
  ...docketPageRoutes,
  ...benchPageRoutes,
]

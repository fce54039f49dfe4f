import { describeRoutes } from './api/describe'
import { enquiryRoutes } from './api/enquiries'
import { officeRoutes } from './api/office'
import { quoteRoutes } from './api/quotes'
import { docketRoutes } from './api/studio'
import { transferRoutes } from './api/transfer'
import { pageRoutes } from './pages'
import { apiPageRoutes } from './pages/api-page'
import type { Route } from './route'

const own: readonly Route[] = [
  ...enquiryRoutes,
  ...quoteRoutes,
  ...docketRoutes,
  ...officeRoutes,
  ...transferRoutes,
  ...pageRoutes,
]

/** Every route there is: mounted, validated, documented and tested from this one list. */
export const registry: readonly Route[] = [...own, ...describeRoutes(own), ...apiPageRoutes(own)]

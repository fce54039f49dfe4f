import { accountApiRoutes } from './api/account'
import { benchRoutes } from './api/bench'
import { dayApiRoutes } from './api/days'
import { describeRoutes } from './api/describe'
import { deskRoutes } from './api/desk'
import { docketRoutes } from './api/dockets'
import { enquiryRoutes } from './api/enquiries'
import { jobRoutes } from './api/jobs'
import { officeRoutes } from './api/office'
import { personalDataRoutes } from './api/personal-data'
import { quoteRoutes } from './api/quotes'
import { reIssueRoutes } from './api/re-issues'
import { revisionRoutes } from './api/revisions'
import { sessionRoutes } from './api/sessions'
import { studioDaysRoutes } from './api/studio-days'
import { transferRoutes } from './api/transfer'
import { pageRoutes } from './pages'
import { apiPageRoutes } from './pages/api-page'
import type { Route } from './route'

const own: readonly Route[] = [
  ...enquiryRoutes,
  ...quoteRoutes,
  ...reIssueRoutes,
  ...dayApiRoutes,
  ...docketRoutes,
  ...personalDataRoutes,
  ...deskRoutes,
  ...revisionRoutes,
  ...jobRoutes,
  ...accountApiRoutes,
  ...studioDaysRoutes,
  ...benchRoutes,
  ...sessionRoutes,
  ...officeRoutes,
  ...transferRoutes,
  ...pageRoutes,
]

/** Every route there is: mounted, validated, documented and tested from this one list. */
export const registry: readonly Route[] = [...own, ...describeRoutes(own), ...apiPageRoutes(own)]

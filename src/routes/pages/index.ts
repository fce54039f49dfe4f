import type { Route } from '../route'

export const pageRoutes: readonly Route[] = []

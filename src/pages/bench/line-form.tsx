import type { Child, FC } from 'hono/jsx'
import type { LineKind } from '../../docket/kinds'
import { Once } from '../parts/button'
import { paths } from '../paths'

/** A form that writes one line of the bench; its fields are named as the line's body. */
export const LineForm: FC<{
  readonly id: string
  readonly kind: LineKind
  readonly once: string
  readonly hidden?: Readonly<Record<string, string>>
  readonly children?: Child
}> = ({ id, kind, once, hidden = {}, children }) => (
  <form class="screen-only" method="post" action={paths.benchLines(id)} novalidate>
    <Once once={once} />
    <input type="hidden" name="kind" value={kind} />
    {Object.entries(hidden).map(([name, value]) => (
      <input type="hidden" name={name} value={value} />
    ))}
    {children}
  </form>
)

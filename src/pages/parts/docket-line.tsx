import type { Child, FC } from 'hono/jsx'

export type DocketLineProps = {
  /** Plain "change" link at the end of the line. */
  readonly change?: { readonly href: string; readonly text: string; readonly about: string }
  readonly children?: Child
}

/** One numbered line of the docket; the list around it numbers the margin. */
export const DocketLine: FC<DocketLineProps> = ({ change, children }) => (
  <li>
    <div class="line">
      <div>{children}</div>
      {change ? (
        <a class="change" href={change.href}>
          {change.text}
          <span class="unseen"> {change.about}</span>
        </a>
      ) : null}
    </div>
  </li>
)

import type { Child, FC } from 'hono/jsx'

export type ButtonProps = {
  readonly name?: string
  readonly value?: string
  /** Quiet: the less likely way on, beside a main one. */
  readonly quiet?: boolean
  readonly children?: Child
}

/** A submit button; one loud one a form. */
export const Button: FC<ButtonProps> = ({ name, value, quiet, children }) => (
  <button type="submit" name={name} value={value} class={quiet ? 'quiet' : undefined}>
    {children}
  </button>
)

/** The key that makes a form sent twice count once. */
export const Once: FC<{ readonly once: string }> = ({ once }) => (
  <input type="hidden" name="once" value={once} />
)

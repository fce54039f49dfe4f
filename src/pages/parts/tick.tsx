import type { FC } from 'hono/jsx'

export type TickProps = {
  readonly type: 'radio' | 'checkbox'
  readonly name: string
  readonly value: string
  readonly label: string
  readonly hint?: string
  readonly checked?: boolean
  readonly id?: string
  readonly describedby?: string
  /** Clears the others when ticked (by the browser script); said in words as well. */
  readonly alone?: boolean
}

/** One radio or checkbox with its whole row as the target. */
export const Tick: FC<TickProps> = (p) => (
  <label class="tick">
    <input
      type={p.type}
      name={p.name}
      value={p.value}
      id={p.id}
      checked={p.checked}
      aria-describedby={p.describedby}
      data-alone={p.alone ? '1' : undefined}
    />
    <span>
      {p.label}
      {p.hint ? <small>{p.hint}</small> : null}
    </span>
  </label>
)

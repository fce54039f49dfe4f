import type { FC } from 'hono/jsx'
import { SUPPLY, WANTED } from '../../jobsheet/in-hand'
import { keptOne } from '../frame'
import { Button } from '../parts/button'
import { Field, Select } from '../parts/field'
import { isRefused, typed } from '../parts/refused'
import { paths } from '../paths'
import { type ActsProps, Rev } from './docket-acts'
import type { InHandView } from './docket-view'

const Line: FC<ActsProps & { readonly item: InHandView['items'][number] }> = (p) => {
  const { words, item, kept } = p
  return (
    <li class="in-hand">
      <p>
        <b>{item.thing}</b>
        {item.steps.length > 0 ? (
          <span class="quietly"> · {words.say('page.in-hand.for', { steps: item.steps })}</span>
        ) : null}
      </p>
      <p class={item.late ? undefined : 'quietly'}>{item.late ? <b>{item.when}</b> : item.when}</p>
      <div class="pair">
        <Select
          name={`state:${item.item}`}
          id={`f-state-${item.n}`}
          label={words.say('page.in-hand.state', { thing: item.thing })}
          value={keptOne(kept, `state:${item.item}`, item.state)}
          options={SUPPLY.map((s) => ({ value: s, label: words.say(`page.in-hand.${s}`) }))}
        />
        <Field
          name={`expected:${item.item}`}
          id={`f-expected-${item.n}`}
          type="date"
          label={words.say('page.in-hand.expected')}
          value={keptOne(kept, `expected:${item.item}`, item.expected ?? '')}
          short
          {...(p.errors ? { errors: p.errors } : {})}
        />
      </div>
    </li>
  )
}

/** What has to be there before the car comes, how far each thing is, and what else is wanted. */
export const InHandSection: FC<ActsProps> = (p) => {
  const { words, docket } = p
  const view = docket.inHand
  if (!view) return null
  const open = view.items.filter((i) => i.state !== 'in-hand').length
  const own = keptOne(p.kept, 'thing') ? p : {}
  return (
    <section id="in-hand">
      <h2>{words.say('page.in-hand')}</h2>
      <p>{words.say(open === 0 ? 'page.in-hand.all' : 'page.in-hand.open', { n: open })}</p>
      <form method="post" action={paths.docketInHand(docket.id)} novalidate>
        <Rev {...p} what="in-hand" />
        <ol class="lines">
          {view.items.map((item) => (
            <Line {...p} item={item} />
          ))}
        </ol>
        <details class="screen-only" open={isRefused(own)}>
          <summary>{words.say('page.in-hand.add')}</summary>
          <Select
            name="what"
            label={words.say('page.in-hand.what')}
            options={WANTED.map((w) => ({ value: w, label: words.say(`page.in-hand.${w}`) }))}
          />
          <Field
            name="thing"
            label={words.say('page.in-hand.thing')}
            maxlength={120}
            {...typed(own, 'thing')}
          />
          <Field
            name="orderBy"
            type="date"
            label={words.say('page.in-hand.order-by')}
            hint={words.say('page.in-hand.order-by.hint')}
            short
            {...typed(own, 'orderBy')}
          />
        </details>
        <div class="acts screen-only">
          <Button quiet>{words.say('page.in-hand.save')}</Button>
        </div>
      </form>
    </section>
  )
}

import type { FC } from 'hono/jsx'
import type { Frame } from '../frame'
import type { PhotoView } from '../intake/question-view'
import { Layout } from '../layout'
import { Button, Once } from '../parts/button'
import { DocketLine } from '../parts/docket-line'
import { Tick } from '../parts/tick'
import { paths } from '../paths'

export type MyDataPageProps = {
  readonly frame: Frame
  readonly id: string
  readonly answers: readonly {
    readonly prompt: string
    readonly answer: string
    /** Why the studio changed it. */
    readonly corrected?: string
  }[]
  readonly photos: readonly PhotoView[]
  /** Everything else that was typed: questions, reasons. */
  readonly typed: readonly { readonly label: string; readonly text: string }[]
  readonly once: string
  readonly canErase: boolean
  readonly canWithdraw: boolean
  /** Where the same is to be had as a file. */
  readonly fileHref?: string
}

/** All the customer gave us, to read, to take along and to delete. */
export const MyDataPage: FC<MyDataPageProps> = (p) => {
  const { words } = p.frame
  return (
    <Layout frame={p.frame} title={words.say('page.data')}>
      <section>
        <h1>{words.say('page.data')}</h1>
        <p>{words.say('page.data.lead')}</p>
        {p.fileHref ? (
          <p>
            <a href={p.fileHref}>{words.say('page.data.file')}</a>
          </p>
        ) : null}
      </section>
      <ol class="lines">
        {p.answers.map((a) => (
          <DocketLine>
            <p class="asked">{a.prompt}</p>
            <p class="said">{a.answer}</p>
            {a.corrected === undefined ? null : (
              <p class="reply">{words.say('page.fact.corrected', { why: a.corrected })}</p>
            )}
          </DocketLine>
        ))}
        {p.typed.map((t) => (
          <DocketLine>
            <p class="asked">{t.label}</p>
            <p class="said">{t.text}</p>
          </DocketLine>
        ))}
      </ol>
      {p.photos.length > 0 ? (
        <section>
          <h2>{words.say('page.data.photos')}</h2>
          <ul class="photos">
            {p.photos.map((photo) => (
              <li>
                <img src={photo.src} alt={photo.subject} width="120" height="90" />
              </li>
            ))}
          </ul>
        </section>
      ) : null}
      {p.canWithdraw ? (
        <section>
          <h2>{words.say('page.data.withdraw')}</h2>
          <p>{words.say('page.data.withdraw.lead')}</p>
          <form method="post" action={paths.withdrawal(p.id)}>
            <Once once={`${p.once}-withdraw`} />
            <div class="acts">
              <Button quiet>{words.say('page.data.withdraw.button')}</Button>
            </div>
          </form>
        </section>
      ) : null}
      {p.canErase ? (
        <section>
          <h2>{words.say('page.data.erase')}</h2>
          <p>{words.say('page.data.erase.lead')}</p>
          <form method="post" action={paths.erasure(p.id)}>
            <Once once={`${p.once}-erase`} />
            <Tick type="checkbox" name="sure" value="1" label={words.say('page.data.erase.sure')} />
            <div class="acts">
              <Button quiet>{words.say('page.data.erase.button')}</Button>
            </div>
          </form>
        </section>
      ) : null}
    </Layout>
  )
}

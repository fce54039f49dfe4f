import type { FC } from 'hono/jsx'
import type { Words } from '../../words/render'
import { Button, Once } from '../parts/button'
import { errorFor, FieldFault, fieldId } from '../parts/error-summary'
import { paths } from '../paths'
import type { QuestionFormProps } from './question-form'
import type { PhotoView, QuestionView } from './question-view'

type Guided = {
  readonly words: Words
  readonly question: QuestionView
  readonly photos: readonly PhotoView[]
}

const countOf = (photos: readonly PhotoView[], label: string): number =>
  photos.filter((p) => p.subject === label).length

/** What would help with this car, each with how to take it and whether it is there. */
const Guide: FC<Guided> = ({ words, question: { subjects = [] }, photos }) =>
  subjects.length === 0 ? null : (
    <>
      <p class="hint">{words.say('page.photo.guide')}</p>
      <ul class="plain">
        {subjects.map(({ label, hint }) => {
          const n = countOf(photos, label)
          return (
            <li>
              <b>{label}</b> <span class="quietly">{hint}</span>
              {n > 0 ? <b>{` ${words.say('page.photo.have', { n })}`}</b> : null}
            </li>
          )
        })}
      </ul>
    </>
  )

/** The first that is still missing stands chosen, so that a round is one press after another. */
const Subject: FC<Guided> = ({ words, question, photos }) => {
  const { subjects = [] } = question
  const next = subjects.find((s) => countOf(photos, s.label) === 0)?.value
  if (subjects.length === 0) return <input type="hidden" name="subject" value={question.id} />
  return (
    <div class="field">
      <label for={fieldId('subject')}>{words.say('page.photo.subject')}</label>
      <select id={fieldId('subject')} name="subject">
        {subjects.map((s) => (
          <option value={s.value} selected={s.value === next}>
            {s.label}
          </option>
        ))}
      </select>
    </div>
  )
}

/** Sending a photo is a form of its own, so that it works one by one and without a script. */
export const PhotoForms: FC<QuestionFormProps> = (p) => {
  const { words, id, question, once, photos = [], errors } = p
  const guided = { words, question, photos }
  return (
    <div class="photo-step">
      <Guide {...guided} />
      {photos.length > 0 ? (
        <ul class="photos">
          {photos.map((photo) => (
            <li>
              <img src={photo.src} alt={photo.subject} loading="lazy" width="120" height="90" />
              <p class="quietly">{photo.subject}</p>
              <form method="post" action={paths.photoRemoval(id, photo.photo)}>
                <Once once={once} />
                <Button quiet>
                  {words.say('page.photo.remove')}
                  <span class="unseen"> {photo.subject}</span>
                </Button>
              </form>
            </li>
          ))}
        </ul>
      ) : null}
      <form
        method="post"
        action={paths.photos(id)}
        enctype="multipart/form-data"
        data-enhance="photo"
      >
        <Once once={once} />
        <Subject {...guided} />
        <FieldFault name="file" message={errorFor(errors, 'file')} />
        <div class="field">
          <FieldFault name="camera" message={errorFor(errors, 'camera')} />
          <label for="f-camera">{words.say('page.photo.camera')}</label>
          <input
            id="f-camera"
            type="file"
            name="camera"
            accept="image/*"
            capture="environment"
            aria-describedby="f-file-hint"
          />
        </div>
        <div class="field">
          <label for={fieldId('file')}>{words.say('page.photo.choose')}</label>
          <input
            id={fieldId('file')}
            type="file"
            name="file"
            accept="image/jpeg,image/png,image/webp"
            aria-describedby="f-file-hint"
          />
          <p class="hint" id="f-file-hint">
            {words.say('page.photo.hint')} {words.say('page.photo.lost-nothing')}
          </p>
        </div>
        <div class="acts">
          <Button quiet>{words.say('page.photo.add')}</Button>
        </div>
      </form>
    </div>
  )
}

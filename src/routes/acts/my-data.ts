import { ownWordsIn } from '../../docket/own-words'
import { DEFAULT_RETENTION } from '../../docket/retention'
import { isUnsure } from '../../intake/answers'
import { personalData } from '../../store/personal-data'
import type { Studio } from '../route'
import type { Desk } from './desk'

/** Everything a customer gave: answers, contact, texts and pictures, as data. */
export const myData = (desk: Desk) => ({
  id: desk.id,
  reference: desk.docket.reference,
  state: desk.docket.state,
  openedAt: new Date(desk.docket.openedAt).toISOString(),
  contact: desk.people.map(({ name, email, phone, vin, plate }) => ({
    name,
    email,
    phone,
    vin,
    plate,
  })),
  answers: Object.entries(desk.docket.answers).map(([question]) => {
    const answer = desk.answers[question]
    return {
      question,
      ...(answer === undefined || isUnsure(answer) ? { unsure: true } : { value: answer.value }),
    }
  }),
  texts: [...desk.texts.values()],
  inLines: desk.lines.flatMap((l) => ownWordsIn(l.kind, l.body)),
  photos: desk.photos.map((p) => ({ photo: p.id, subject: p.subject, bytes: p.bytes })),
})

/** What a person may ask of the studio: all that is kept of them, where, what for and how long. */
export const dataReport = (desk: Desk, studio: Studio) => ({
  ...myData(desk),
  kept: personalData,
  retention: studio.profile.retention ?? DEFAULT_RETENTION,
})

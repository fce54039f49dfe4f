import { describe, expect, it } from 'vitest'
import type { Question } from '../intake/question'
import { bestThing } from '../intake/questions/best-thing'
import { body } from '../intake/questions/body'
import { budget } from '../intake/questions/budget'
import { contact } from '../intake/questions/contact'
import { deadline } from '../intake/questions/deadline'
import { filmAge } from '../intake/questions/film-age'
import { mileage } from '../intake/questions/mileage'
import { photos } from '../intake/questions/photos'
import { services } from '../intake/questions/services'
import { wetElectrics } from '../intake/questions/wet-electrics'
import { year } from '../intake/questions/year'
import { answerText } from './answer-text'
import { questionsEn } from './en/questions'
import { words } from './render'

const w = words([questionsEn], { language: 'en', locale: 'en-GB', currency: 'EUR', exponent: 2 })
const text = (q: Question<unknown>, value: unknown): string => answerText(q, { value }, w)

describe('answerText', () => {
  it.each([
    [body, 'city-car', 'City car'],
    [services, [], 'None of these'],
    [
      services,
      ['paint', 'protect', 'cabin'],
      'Polish the paint, Protect the paint and Clean the inside',
    ],
    [wetElectrics, true, 'Yes'],
    [wetElectrics, false, 'No'],
    [filmAge, 1, '1 year'],
    [filmAge, 25, '25 years'],
    [filmAge, 2.5, '2.5 years'],
    [mileage, 160_934.4, '160,934 km'],
    [year, 1999, '1999'],
    [deadline, '2026-06-05', 'Fri 5 June'],
    [budget, 60_000, '€600.00'],
    [budget, null, 'Left out'],
    [bestThing, '<b>{n}</b>', '<b>{n}</b>'],
    [photos, ['a', 'b'], '2 photos'],
    [contact, { name: 'Ada', phone: '12345' }, 'Ada, 12345'],
  ])('shows %#', (q, value, shown) => {
    expect(text(q as Question<unknown>, value)).toBe(shown)
  })

  it('says so when the owner does not know', () => {
    expect(answerText(filmAge, { unsure: true }, w)).toBe('Not sure')
  })
})

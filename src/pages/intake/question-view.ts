import type { Kind } from '../../intake/question'

export type OptionView = {
  readonly value: string
  readonly label: string
  readonly hint?: string
}

/** A question with its words, as the contract of the API shows it. */
export type QuestionView = {
  readonly id: string
  readonly kind: Kind
  readonly prompt: string
  readonly why?: string
  /** How to find out, where there is something to try. */
  readonly how?: string
  readonly options?: readonly OptionView[]
  /** Options that cannot stand beside another. */
  readonly alone?: readonly string[]
  /** The unit asked in, and every unit it may be given in. */
  readonly unit?: string
  readonly units?: readonly string[]
  readonly min?: number
  readonly max?: number
  /** Pictures that would help, of a question for pictures. */
  readonly subjects?: readonly Required<OptionView>[]
  readonly unsureAllowed: boolean
  readonly optional: boolean
}

export type AnsweredView = {
  readonly question: string
  readonly prompt: string
  readonly answer: string
  readonly reply?: string
}

export type PhotoView = { readonly photo: string; readonly subject: string; readonly src: string }

/** Marks of a hurried machine: a field people do not see, and when the form was made. Names are the route's. */
export type Trap = {
  readonly field: string
  readonly timeField: string
  readonly time: string
}

import type { PolishLevel } from '../context'

/** How the paint is treated in one option of a quote; a repaint is the body shop's work, not ours. */
export const TREATMENTS = ['leave', 'finishing', 'light', 'two-step', 'repaint'] as const
export type Treatment = (typeof TREATMENTS)[number]

/** How deep we polish then. What a body shop repaints we do not touch. */
export const levelOfTreatment = (treatment: Treatment): PolishLevel =>
  treatment === 'leave' || treatment === 'repaint' ? 'none' : treatment

import { expect } from 'vitest'
import type { Json } from '../support/caller'
import { accept, quoteIt, type Stranger } from './stranger'

const CAR = {
  body: { value: 'hatchback' },
  dangers: { value: [] },
  year: { value: 2019 },
  services: { value: ['paint'] },
  colour: { value: 'mid' },
  wish: { value: 'improve' },
  contact: { value: { name: 'Orla Example', phone: '+353 1 555 0177' } },
}

/** A docket the studio opened, quoted and had agreed, with the customer's key from the sent link. */
export const agreedCar = async (stranger: Stranger, more: Json = {}) => {
  const { call, ownerKey: key } = stranger
  const json = { answers: { ...CAR, ...more }, consent: true }
  const opened = await call('POST', '/api/v1/dockets', { key, json })
  expect(opened.status, opened.text).toBe(201)
  const { id } = opened.json
  const docket = `/api/v1/dockets/${id}`
  const { estimate } = (await call('GET', docket, { key })).json
  const { sent } = await quoteIt(stranger, id, estimate)
  const customer = String(sent.link).split('/').at(-1) ?? ''
  const own = `/api/v1/enquiries/${id}`
  const { agreed } = await accept(stranger, own, customer)
  const found = (await call('GET', docket, { key })).json
  return { id, docket, own, customer, rev: agreed.rev as number, reference: found.reference }
}

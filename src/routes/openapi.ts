import * as z from 'zod'
import type { Route } from './route'
import { VERSION } from './version'

/** Any JSON value is said once, for the whole document: references count from its root. */
const ANY = { $ref: '#/components/schemas/Any' }

const withoutOwnDefinitions = (schema: unknown): unknown => {
  if (Array.isArray(schema)) return schema.map(withoutOwnDefinitions)
  if (schema === null || typeof schema !== 'object') return schema
  if ('$ref' in schema) return ANY
  return Object.fromEntries(
    Object.entries(schema).map(([name, value]) => [name, withoutOwnDefinitions(value)]),
  )
}

/** A schema as JSON Schema. The only one that names itself is that of any JSON value. */
const schemaOf = (schema: z.ZodType, io: 'input' | 'output'): unknown => {
  const { $schema: _, $defs, ...rest } = z.toJSONSchema(schema, { io, unrepresentable: 'any' })
  const others = Object.values($defs ?? {}).filter((d) => d.anyOf?.length !== 6)
  if (others.length > 0) throw new Error('a schema that names itself needs a place of its own')
  return withoutOwnDefinitions(rest)
}

const parametersOf = (route: Route): readonly unknown[] => {
  const inPath = [...route.path.matchAll(/:(\w+)/g)].map(([, name]) => ({
    name,
    in: 'path',
    required: true,
    schema: { type: 'string' },
  }))
  const shape = route.query === undefined ? {} : (schemaOf(route.query, 'input') as QuerySchema)
  const inQuery = Object.entries(shape.properties ?? {}).map(([name, schema]) => ({
    name,
    in: 'query',
    required: shape.required?.includes(name) ?? false,
    schema,
  }))
  const headers = [
    ...(route.match === undefined
      ? []
      : [
          {
            name: 'If-Match',
            in: 'header',
            required: route.match === 'required',
            schema: { type: 'string' },
            description: 'The revision you have seen, quoted.',
          },
        ]),
    ...(route.method === 'POST'
      ? [
          {
            name: 'Idempotency-Key',
            in: 'header',
            required: false,
            schema: { type: 'string' },
            description: 'A quoted text; the same key gives the first answer for 24 hours.',
          },
        ]
      : []),
  ]
  return [...inPath, ...inQuery, ...headers]
}

type QuerySchema = {
  readonly properties?: Readonly<Record<string, unknown>>
  readonly required?: readonly string[]
}

const bodyOf = (route: Route): unknown => {
  if (route.body === undefined) return undefined
  if (route.body === 'form' || route.body === 'multipart')
    return {
      content: {
        'multipart/form-data': {
          schema: {
            type: 'object',
            properties: {
              file: { type: 'string', format: 'binary' },
              subject: { type: 'string' },
            },
          },
        },
      },
    }
  if (route.body === 'picture')
    return { content: { 'image/*': { schema: { type: 'string', format: 'binary' } } } }
  return {
    content: { 'application/json': { schema: schemaOf(route.described ?? route.body, 'input') } },
  }
}

const PROBLEM = { $ref: '#/components/responses/Problem' }

/** Statuses of problems a route may end with besides its own answers. */
export const problemStatuses = (route: Route): readonly number[] => {
  const found = new Set<number>([500, 503])
  if (route.rights === 'bench' || route.rights === 'owner') found.add(401)
  // A code that opens nothing is answered as no credentials at all.
  if (route.rate?.name === 'sign-in') found.add(401)
  if (route.rights === 'owner') found.add(403)
  if (route.path.includes(':')) found.add(404)
  if (route.method !== 'GET') for (const s of [403, 409, 413]) found.add(s)
  if (route.method === 'GET' && route.path.includes(':')) found.add(409)
  if (route.method !== 'GET' && route.path.includes(':id')) found.add(412)
  if (route.body !== undefined) for (const s of [400, 415, 422]) found.add(s)
  if (route.query !== undefined || route.method === 'POST') found.add(422)
  if (route.match !== undefined) found.add(412)
  if (route.match === 'required') found.add(428)
  if (route.rate !== undefined || route.method !== 'GET') found.add(429)
  return [...found].sort((a, b) => a - b)
}

const answersOf = (route: Route): Readonly<Record<string, unknown>> => {
  const good = Object.entries(route.answers).map(([status, schema]) => [
    status,
    {
      description: status === '204' ? 'Done.' : 'As described.',
      ...(schema === null
        ? {}
        : schema === 'other'
          ? { content: { '*/*': { schema: {} } } }
          : { content: { 'application/json': { schema: schemaOf(schema, 'output') } } }),
    },
  ])
  const bad = problemStatuses(route).map((status) => [String(status), PROBLEM])
  return Object.fromEntries([...good, ...bad])
}

const operation = (route: Route): unknown => {
  const body = bodyOf(route)
  return {
    operationId: route.id,
    summary: route.summary,
    tags: [route.path.startsWith('/api/v1/enquiries') ? 'customer' : 'studio'],
    security: route.rights === 'public' ? [] : [{ bearer: [] }],
    'x-rights': route.rights,
    parameters: parametersOf(route),
    ...(body === undefined ? {} : { requestBody: body }),
    responses: answersOf(route),
  }
}

/** The API as OpenAPI 3.1, from the same list that mounts and validates it. */
export const openapi = (routes: readonly Route[], origin: string): Record<string, unknown> => {
  const paths: Record<string, Record<string, unknown>> = {}
  for (const r of routes) {
    if (r.face !== 'api') continue
    const path = r.path.replace(/:(\w+)/g, '{$1}')
    paths[path] = { ...paths[path], [r.method.toLowerCase()]: operation(r) }
  }
  return {
    openapi: '3.1.0',
    info: {
      title: 'Jambside',
      version: VERSION,
      description: 'Intake, estimate, quote, job sheet and hand-over record of a detailing studio.',
    },
    servers: [{ url: origin }],
    paths,
    components: {
      schemas: { Any: { description: 'Any JSON value.' } },
      securitySchemes: { bearer: { type: 'http', scheme: 'bearer' } },
      responses: {
        Problem: {
          description: 'Not done, and why (RFC 9457).',
          content: {
            'application/problem+json': {
              schema: {
                type: 'object',
                required: ['type', 'title', 'status', 'code'],
                properties: {
                  type: { type: 'string' },
                  title: { type: 'string' },
                  status: { type: 'integer' },
                  code: { type: 'string' },
                  detail: { type: 'string' },
                  errors: {
                    type: 'array',
                    items: {
                      type: 'object',
                      required: ['pointer', 'code', 'message'],
                      properties: {
                        pointer: { type: 'string' },
                        code: { type: 'string' },
                        message: { type: 'string' },
                      },
                    },
                  },
                },
              },
            },
          },
        },
      },
    },
  }
}

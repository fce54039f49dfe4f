/** The messages of Hrana 2 over HTTP that libSQL clients send (docs/HTTP_V2_SPEC.md of libsql). */
export type HranaValue =
  | { readonly type: 'null' }
  | { readonly type: 'integer'; readonly value: string }
  | { readonly type: 'float'; readonly value: number }
  | { readonly type: 'text'; readonly value: string }
  | { readonly type: 'blob'; readonly base64: string }

export type HranaStmt = {
  readonly sql?: string | null
  readonly sql_id?: number | null
  readonly args?: readonly HranaValue[]
  readonly named_args?: readonly { readonly name: string; readonly value: HranaValue }[]
  readonly want_rows?: boolean
}

export type HranaCondition =
  | { readonly type: 'ok' | 'error'; readonly step: number }
  | { readonly type: 'not'; readonly cond: HranaCondition }
  | { readonly type: 'and' | 'or'; readonly conds: readonly HranaCondition[] }

export type HranaBatch = {
  readonly steps: readonly {
    readonly condition?: HranaCondition | null
    readonly stmt: HranaStmt
  }[]
}

export type HranaRequest =
  | { readonly type: 'close' }
  | { readonly type: 'execute'; readonly stmt: HranaStmt }
  | { readonly type: 'batch'; readonly batch: HranaBatch }
  | { readonly type: 'sequence'; readonly sql?: string | null; readonly sql_id?: number | null }
  | { readonly type: 'store_sql'; readonly sql_id: number; readonly sql: string }
  | { readonly type: 'close_sql'; readonly sql_id: number }

export type PipelineRequest = {
  readonly baton?: string | null
  readonly requests: readonly HranaRequest[]
}

export type HranaError = { readonly message: string; readonly code: string }

export type StmtResult = {
  readonly cols: readonly { readonly name: string; readonly decltype: string | null }[]
  readonly rows: readonly (readonly HranaValue[])[]
  readonly affected_row_count: number
  readonly last_insert_rowid: string | null
}

export type BatchResult = {
  readonly step_results: readonly (StmtResult | null)[]
  readonly step_errors: readonly (HranaError | null)[]
}

/** A mistake in what the client sent or the state of its stream, as the client is told of it. */
export class HranaFault extends Error {
  readonly code: string
  constructor(code: string, message: string) {
    super(message)
    this.code = code
  }
}

import { type EstimateInput, estimate } from '../../src/quote/estimate'
import { MATH_ARGUMENTS, type MathName } from './math-arguments'

// Bundled once and run as the same text in Node, workerd and a browser.

/** The estimate of each input as the JSON it would be sent as. */
export const estimatesOf = (inputs: readonly EstimateInput[]): readonly string[] =>
  inputs.map((input) => JSON.stringify(estimate(input)))

/**
 * The bits of a function's values over all its arguments, as hexadecimal text. Every NaN counts as
 * the same one: which of its many bit patterns comes out depends on how hot the code is.
 */
export const mathBits = (name: MathName): string => {
  const out = new DataView(new ArrayBuffer(8))
  const f = Math[name]
  let text = ''
  for (const x of MATH_ARGUMENTS) {
    const value = f(x)
    if (Number.isNaN(value)) {
      text += 'not a number'.padEnd(16)
      continue
    }
    out.setFloat64(0, value)
    text += out.getUint32(0).toString(16).padStart(8, '0')
    text += out.getUint32(4).toString(16).padStart(8, '0')
  }
  return text
}

/** In a Worker: `{inputs}` gives the estimates, `{math}` the bits. */
export const worker = {
  fetch: async (request: Request): Promise<Response> => {
    const asked = (await request.json()) as
      | { readonly inputs: readonly EstimateInput[] }
      | { readonly math: MathName }
    return Response.json('inputs' in asked ? estimatesOf(asked.inputs) : mathBits(asked.math))
  },
}

/** Put in by the benchmark when it bundles the bare Worker. */
declare module 'recorded-traffic' {
  export const traffic: import('./replayed').Replay
}

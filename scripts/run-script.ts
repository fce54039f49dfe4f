import { fileURLToPath } from 'node:url'

/** Runs `main` when the module at `url` is the one that was started; a failure is one line and 1. */
export const runScript = (url: string, main: () => Promise<void> | void): void => {
  if (process.argv[1] !== fileURLToPath(url)) return
  Promise.resolve()
    .then(main)
    .catch((error: unknown) => {
      console.error(error instanceof Error ? error.message : error)
      process.exitCode = 1
    })
}

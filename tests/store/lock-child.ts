import { takeLock } from '../../src/store/lock'

// Takes the lock, says so, and holds it until it is killed.
takeLock(process.argv[2] ?? '')
process.stdout.write('held\n')
setInterval(() => undefined, 60_000)

import { storeContract } from './contract'
import { makeFileStore } from './stores'

storeContract('a file', makeFileStore)

/** A name as it is searched: lower case, without accents, single spaces. */
export const foldName = (name: string): string =>
  name.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().replace(/\s+/g, ' ').trim()

/** A phone number as it is searched: its digits. */
export const foldPhone = (phone: string): string => phone.replace(/\D/g, '')

/** A number plate as it is kept and searched: letters and digits, upper case. */
export const foldPlate = (plate: string): string =>
  plate.toUpperCase().replace(/[^\p{L}\p{N}]/gu, '')

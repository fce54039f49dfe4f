// Exact by the international yard and pound agreement of 1959: 1 inch = 25.4 mm, 1 mile = 1609.344 m.
const UM_PER_MIL = 25.4
const KM_PER_MILE = 1.609344
const M2_PER_FT2 = 0.09290304

/** Thickness in mil (thousandths of an inch) as µm. */
export const umFromMil = (mil: number): number => mil * UM_PER_MIL
/** Thickness in µm as mil. */
export const milFromUm = (um: number): number => um / UM_PER_MIL
/** Distance in miles as km. */
export const kmFromMiles = (miles: number): number => miles * KM_PER_MILE
/** Distance in km as miles. */
export const milesFromKm = (km: number): number => km / KM_PER_MILE
/** Area in square feet as m². */
export const m2FromFt2 = (ft2: number): number => ft2 * M2_PER_FT2
/** Area in m² as square feet. */
export const ft2FromM2 = (m2: number): number => m2 / M2_PER_FT2

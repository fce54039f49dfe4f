import { authority } from './questions/authority'
import { begunYear } from './questions/begun-year'
import { belongings } from './questions/belongings'
import { bestThing } from './questions/best-thing'
import { body } from './questions/body'
import { bringHow } from './questions/bring-how'
import { budget } from './questions/budget'
import { cabinMarks } from './questions/cabin-marks'
import { cabinState } from './questions/cabin-state'
import { changes } from './questions/changes'
import { claim } from './questions/claim'
import { clothTest } from './questions/cloth-test'
import { colour } from './questions/colour'
import { contact } from './questions/contact'
import { dampCheck } from './questions/damp-check'
import { dangers } from './questions/dangers'
import { deadline } from './questions/deadline'
import { defects } from './questions/defects'
import { driveConsent } from './questions/drive-consent'
import { driveState } from './questions/drive-state'
import { dryCheck } from './questions/dry-check'
import { earlierProtection } from './questions/earlier-protection'
import { engineKind } from './questions/engine-kind'
import { filmAge } from './questions/film-age'
import { filmKind } from './questions/film-kind'
import { filmOver } from './questions/film-over'
import { filmStartedWith } from './questions/film-started-with'
import { filmState } from './questions/film-state'
import { filmWhere } from './questions/film-where'
import { finish } from './questions/finish'
import { freeDates } from './questions/free-dates'
import { freshPaintWeeks } from './questions/fresh-paint-weeks'
import { growth } from './questions/growth'
import { hardSoft } from './questions/hard-soft'
import { headliner } from './questions/headliner'
import { insured } from './questions/insured'
import { jacking } from './questions/jacking'
import { keep } from './questions/keep'
import { keptWashed } from './questions/kept-washed'
import { keys } from './questions/keys'
import { leather } from './questions/leather'
import { lockingKey } from './questions/locking-key'
import { mileage } from './questions/mileage'
import { mouldArea } from './questions/mould-area'
import { oneOwner } from './questions/one-owner'
import { otherWork } from './questions/other-work'
import { ownerCheck } from './questions/owner-check'
import { ownerConsent } from './questions/owner-consent'
import { ownerSince } from './questions/owner-since'
import { paintCheck } from './questions/paint-check'
import { paintCode } from './questions/paint-code'
import { paintHistory } from './questions/paint-history'
import { panelMaterial } from './questions/panel-material'
import { partCheck } from './questions/part-check'
import { patina } from './questions/patina'
import { payer } from './questions/payer'
import { peelWhere } from './questions/peel-where'
import { photos } from './questions/photos'
import { placeHas } from './questions/place-has'
import { polishedBefore } from './questions/polished-before'
import { protectionWhen } from './questions/protection-when'
import { readingsBefore } from './questions/readings-before'
import { readingsText } from './questions/readings-text'
import { resprayPanels } from './questions/respray-panels'
import { ride } from './questions/ride'
import { roofCheck } from './questions/roof-check'
import { roofKind } from './questions/roof-kind'
import { roofState } from './questions/roof-state'
import { sensitivePeople } from './questions/sensitive-people'
import { services } from './questions/services'
import { size } from './questions/size'
import { spacers } from './questions/spacers'
import { spilled } from './questions/spilled'
import { systemCheck } from './questions/system-check'
import { terms } from './questions/terms'
import { tint } from './questions/tint'
import { trim } from './questions/trim'
import { use } from './questions/use'
import { vin } from './questions/vin'
import { warningLights } from './questions/warning-lights'
import { wetDepth } from './questions/wet-depth'
import { wetElectrics } from './questions/wet-electrics'
import { wetSource } from './questions/wet-source'
import { wetWhere } from './questions/wet-where'
import { wheelMarks } from './questions/wheel-marks'
import { wheels } from './questions/wheels'
import { whereCar } from './questions/where-car'
import { wish } from './questions/wish'
import { year } from './questions/year'
import { yearCheck } from './questions/year-check'
import type { Script } from './replay'

/** The questions in asking order: dangers, what a first range needs, then what narrows it, most worth first. */
export const script: Script = {
  version: '1',
  given: [begunYear],
  questions: [
    dangers,
    body,
    size,
    year,
    services,
    partCheck,
    cabinState,
    cabinMarks,
    wish,
    paintHistory,
    resprayPanels,
    freshPaintWeeks,
    colour,
    clothTest,
    peelWhere,
    filmKind,
    filmWhere,
    filmAge,
    yearCheck,
    filmState,
    wetWhere,
    wetSource,
    wetDepth,
    dryCheck,
    wetElectrics,
    growth,
    mouldArea,
    dampCheck,
    sensitivePeople,
    roofKind,
    roofCheck,
    driveState,
    defects,
    use,
    deadline,
    finish,
    systemCheck,
    authority,
    ownerConsent,
    terms,
    payer,
    claim,
    bestThing,
    photos,
    budget,
    vin,
    filmStartedWith,
    filmOver,
    paintCheck,
    warningLights,
    engineKind,
    keys,
    polishedBefore,
    lockingKey,
    wheels,
    wheelMarks,
    jacking,
    spacers,
    ride,
    earlierProtection,
    protectionWhen,
    whereCar,
    bringHow,
    placeHas,
    driveConsent,
    insured,
    otherWork,
    paintCode,
    panelMaterial,
    hardSoft,
    leather,
    roofState,
    readingsBefore,
    readingsText,
    headliner,
    trim,
    spilled,
    belongings,
    tint,
    changes,
    ownerSince,
    oneOwner,
    ownerCheck,
    patina,
    keep,
    keptWashed,
    mileage,
    freeDates,
    contact,
  ],
}

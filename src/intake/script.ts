import { authority } from './questions/authority'
import { begunYear } from './questions/begun-year'
import { belongings } from './questions/belongings'
import { bestThing } from './questions/best-thing'
import { body } from './questions/body'
import { budget } from './questions/budget'
import { cabinMarks } from './questions/cabin-marks'
import { cabinState } from './questions/cabin-state'
import { claim } from './questions/claim'
import { clothTest } from './questions/cloth-test'
import { colour } from './questions/colour'
import { contact } from './questions/contact'
import { dangers } from './questions/dangers'
import { deadline } from './questions/deadline'
import { defects } from './questions/defects'
import { driveConsent } from './questions/drive-consent'
import { driveState } from './questions/drive-state'
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
import { jacking } from './questions/jacking'
import { keep } from './questions/keep'
import { keptWashed } from './questions/kept-washed'
import { leather } from './questions/leather'
import { lockingKey } from './questions/locking-key'
import { mileage } from './questions/mileage'
import { mouldArea } from './questions/mould-area'
import { oneOwner } from './questions/one-owner'
import { ownerSince } from './questions/owner-since'
import { paintCode } from './questions/paint-code'
import { paintHistory } from './questions/paint-history'
import { panelMaterial } from './questions/panel-material'
import { patina } from './questions/patina'
import { payer } from './questions/payer'
import { peelWhere } from './questions/peel-where'
import { photos } from './questions/photos'
import { polishedBefore } from './questions/polished-before'
import { readingsBefore } from './questions/readings-before'
import { readingsText } from './questions/readings-text'
import { resprayPanels } from './questions/respray-panels'
import { ride } from './questions/ride'
import { roofKind } from './questions/roof-kind'
import { roofState } from './questions/roof-state'
import { sensitivePeople } from './questions/sensitive-people'
import { services } from './questions/services'
import { size } from './questions/size'
import { spacers } from './questions/spacers'
import { spilled } from './questions/spilled'
import { systemCheck } from './questions/system-check'
import { tint } from './questions/tint'
import { trim } from './questions/trim'
import { use } from './questions/use'
import { vin } from './questions/vin'
import { warningLights } from './questions/warning-lights'
import { wetDepth } from './questions/wet-depth'
import { wetElectrics } from './questions/wet-electrics'
import { wetSource } from './questions/wet-source'
import { wetWhere } from './questions/wet-where'
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
    body,
    dangers,
    size,
    year,
    services,
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
    wetElectrics,
    growth,
    mouldArea,
    sensitivePeople,
    roofKind,
    driveState,
    defects,
    use,
    deadline,
    finish,
    systemCheck,
    authority,
    filmStartedWith,
    filmOver,
    warningLights,
    engineKind,
    polishedBefore,
    lockingKey,
    wheels,
    jacking,
    earlierProtection,
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
    spacers,
    ride,
    bestThing,
    photos,
    budget,
    ownerSince,
    oneOwner,
    patina,
    keep,
    keptWashed,
    mileage,
    payer,
    claim,
    whereCar,
    driveConsent,
    freeDates,
    vin,
    contact,
  ],
}

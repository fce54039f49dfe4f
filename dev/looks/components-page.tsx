import type { Child, FC } from 'hono/jsx'
import type { Assets } from '../../src/pages/assets'
import { Layout } from '../../src/pages/layout'
import { Button } from '../../src/pages/parts/button'
import { DocketLine } from '../../src/pages/parts/docket-line'
import { ErrorSummary } from '../../src/pages/parts/error-summary'
import { Field, Select } from '../../src/pages/parts/field'
import { FromStudio } from '../../src/pages/parts/from-studio'
import { Hatching } from '../../src/pages/parts/hatching'
import { LinkMaker } from '../../src/pages/parts/link-maker'
import { hours, roundMoney } from '../../src/pages/parts/money-text'
import { NotOffered } from '../../src/pages/parts/not-offered'
import { NoteView } from '../../src/pages/parts/note-view'
import { PanelTable } from '../../src/pages/parts/panel-table'
import { PrivateLink } from '../../src/pages/parts/private-link'
import { SpanBar } from '../../src/pages/parts/span-bar'
import { Tick } from '../../src/pages/parts/tick'
import { Timetable } from '../../src/pages/parts/timetable'
import { Why } from '../../src/pages/parts/why'
import { sampleEstimate as e } from '../../src/pages/sample-estimate'
import { sampleWords as words } from '../../src/pages/samples'

const Part: FC<{ readonly name: string; readonly children?: Child }> = ({ name, children }) => (
  <section aria-label={name}>
    <h2>{name}</h2>
    {children}
  </section>
)

const faults = [{ field: 'plate', message: 'Write the plate, for instance AB 123.' }]
const made = { link: 'https://studio.example/l/a/b', qrSvg: '<svg></svg>', until: '2026-12-01' }

/** Every part the pages are made of, each once, with the states that look different. */
export const ComponentsPage: FC<{ readonly assets: Assets }> = ({ assets }) => (
  <Layout frame={{ words, assets, studioName: 'Parts' }} title="Parts" wide>
    <h1>Parts</h1>
    <Part name="Lines of the docket">
      <ol class="docket">
        <DocketLine change={{ href: '#', text: 'change', about: 'Body' }}>Estate</DocketLine>
        <DocketLine>Not sure</DocketLine>
      </ol>
    </Part>
    <Part name="Buttons">
      <p>
        <Button>Send</Button> <Button quiet>Not sure</Button>
      </p>
    </Part>
    <Part name="Ticks">
      <Tick type="radio" name="r" value="1" label="Original paint" checked />
      <Tick type="radio" name="r" value="2" label="Painted again" hint="Also in part" />
      <Tick type="checkbox" name="c" value="1" label="Swirls" />
    </Part>
    <Part name="Fields">
      <Field name="plain" label="Name" />
      <Field
        name="short"
        label="Year"
        inputmode="numeric"
        short
        value="2014"
        hint="As on the papers"
      />
      <Field name="rows" label="Anything else" rows={3} />
      <Select
        name="select"
        label="Level"
        options={[
          { value: 'light', label: 'One light pass' },
          { value: 'none', label: 'Leave it' },
        ]}
      />
    </Part>
    <Part name="Faults">
      <ErrorSummary words={words} errors={faults} />
      <Field name="plate" label="Plate" errors={faults} value="?" />
    </Part>
    <Part name="Range of a price">
      <SpanBar
        low={e.price.low}
        likely={e.price.likely}
        high={e.price.high}
        tick={e.price.likely * 1.1}
        lowText={roundMoney(words, e.price.low)}
        likelyText={roundMoney(words, e.price.likely)}
        highText={roundMoney(words, e.price.high)}
      />
      <p>{hours(words, e.labourMinutes.likely)}</p>
    </Part>
    <Part name="Allowance">
      {[null, 0, 1.5, 5].map((allowance) => (
        <p>
          <Hatching allowance={allowance} />{' '}
          {allowance === null ? 'cannot be read' : `${allowance} µm`}
        </p>
      ))}
    </Part>
    <Part name="Notes">
      {(['stop', 'decide', 'know'] as const).map((severity) => {
        const note = e.riskNotes.find((n) => n.severity === severity)
        return note ? <NoteView words={words} note={note} full /> : null
      })}
    </Part>
    <Part name="Why">
      <Why words={words} because={e.steps[0]?.because ?? []} source="own estimate" />
    </Part>
    <Part name="Panels">
      <PanelTable words={words} panels={e.paint.panels} full />
    </Part>
    <Part name="Timetable">
      <Timetable words={words} plan={e.plan} stepName={(id) => words.say(`step.${id}`)} />
    </Part>
    <Part name="Not offered">
      <NotOffered words={words} scope={e.scope} />
    </Part>
    <Part name="From the studio">
      <FromStudio
        words={words}
        view={{
          asked: [{ href: '#', prompt: 'How old is the film?' }],
          corrected: [{ prompt: 'Body', answer: 'Estate', why: 'Seen on the photo' }],
        }}
      />
    </Part>
    <Part name="Links">
      <PrivateLink words={words} link={made.link} label="Private link" id="shown" />
      <LinkMaker words={words} id="d1" once="k1" />
    </Part>
  </Layout>
)

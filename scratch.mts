import { launchChromium } from './tests/support/chromium'
import { readFileSync } from 'node:fs'
const link = process.argv[2]!, key = readFileSync('/tmp/demo.key', 'utf8').trim()
const b = await launchChromium()
const c = await b.newContext({ viewport: { width: 390, height: 800 } })
const p = await c.newPage()
await p.goto(link); await p.getByRole('button').last().click(); await p.waitForLoadState()
const list = await (await fetch('http://127.0.0.1:8901/api/v1/dockets?limit=50', { headers: { authorization: `Bearer ${key}` } })).json() as any
const all: any[] = []
for (const turn of ['ours', 'theirs', 'bay', 'closed']) { const r: any = await (await fetch(`http://127.0.0.1:8901/api/v1/dockets?turn=${turn}`, { headers: { authorization: `Bearer ${key}` } })).json(); all.push(...r.dockets) }
const of = (s: string) => all.find(d => d.state === s)?.id
const pages: [string, string][] = [['studio', '/studio'], ['days', '/studio/days'], ['to-send', '/studio/to-send'], ['docket-quoted', `/studio/d/${of('quoted')}`], ['account', `/studio/d/${of('handed-over')}/account`], ['bench', `/bench/${of('on-bench')}`], ['settings', '/studio/settings'], ['work', '/studio/settings/work'], ['devices', '/studio/devices'], ['docket-bay', `/studio/d/${of('held')}`]]
for (const [n, path] of pages) { const r = await p.goto('http://127.0.0.1:8901' + path); console.log(n, r?.status(), await p.evaluate(() => document.documentElement.scrollWidth - innerWidth), await p.evaluate(() => document.body.scrollHeight)); await p.screenshot({ path: `/tmp/live-${n}.png`, fullPage: true }) }
const cust = readFileSync('/tmp/demo.out', 'utf8').match(/http\S+\/l\/\S+/g)!.map(l => l.replace('8787', '8901'))
let i = 0
for (const l of cust) { const cc = await b.newContext({ viewport: { width: 390, height: 800 } }); const q = await cc.newPage(); await q.goto(l); await q.getByRole('button').first().click(); await q.waitForLoadState(); console.log(q.url()); await q.screenshot({ path: `/tmp/live-cust${i++}.png`, fullPage: true }) ; if (i===1) { await q.goto(q.url().replace(/\/quote$/, '') ); await q.screenshot({path:'/tmp/live-cust-talk.png', fullPage:true}) } }
await b.close()

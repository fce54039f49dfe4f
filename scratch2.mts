import { launchChromium } from '/tmp/w/me/tests/support/chromium'
import { writeFileSync } from 'node:fs'
const [,, src, out, ...ys] = process.argv
const b = await launchChromium(); const p = await b.newPage({ viewport: { width: 1600, height: 1000 } })
writeFileSync('/tmp/crop.html', '<body style="margin:0;display:flex;gap:6px;background:#777">' + ys.map(y => `<div style="width:390px;height:1000px;overflow:hidden;flex:none"><img src="${src}" style="margin-top:-${y}px;display:block"></div>`).join(''))
await p.goto('file:///tmp/crop.html'); await p.screenshot({ path: out }); await b.close()

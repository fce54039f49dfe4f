// What people and programs type that nobody meant to be typed.

export const MARKUP = `<script>alert(1)</script><img src=x onerror=alert(2)>"'\`><svg onload=alert(3)>&amp;{{7*7}}`
export const TURNED = 'עברית عربي 👩🏽‍🔧🚗 Ünïcode “quotes” ’'
export const LONG = '0123456789'.repeat(1000)

/** Shows the digits pads and lets their keys write into the box they belong to. */
export const setUpPads = (root: ParentNode): void => {
  for (const pad of root.querySelectorAll<HTMLElement>('[data-pad]')) {
    const box = document.getElementById(pad.dataset.pad ?? '')
    if (!(box instanceof HTMLInputElement)) continue
    pad.hidden = false
    // Keeps the phone's own keyboard down while the large keys are there.
    box.inputMode = 'none'
    pad.onclick = (event) => {
      const key = (event.target as HTMLElement).closest<HTMLElement>('[data-key]')?.dataset.key
      if (key === undefined) return
      if (key === 'back') box.value = box.value.slice(0, -1)
      else box.value += key === 'next' ? ' ' : key
    }
  }
}

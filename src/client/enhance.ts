import { setUpCopying } from './copy'
import { setUpPads } from './pad'
import { send } from './submit'

const here = (): string => location.pathname + location.search
let shown = here()

const setUp = (): void => {
  setUpPads(document)
  setUpCopying(document)
  shown = here()
}

document.addEventListener('submit', (event) => {
  const form = event.target
  if (!(form instanceof HTMLFormElement) || !form.dataset.enhance) return
  event.preventDefault()
  void send(form, event.submitter, setUp)
})

/** An option that stands alone takes the others back, and the other way round. */
document.addEventListener('change', (event) => {
  const box = event.target
  if (!(box instanceof HTMLInputElement) || box.type !== 'checkbox' || !box.checked) return
  const others = box.closest('.ticks')?.querySelectorAll<HTMLInputElement>('[type="checkbox"]')
  for (const other of others ?? [])
    if (other !== box && (box.dataset.alone || other.dataset.alone)) other.checked = false
})

// The server knows where things stand; going back shows that, not a page from memory. A jump within
// the page is told in the same way and is none.
addEventListener('popstate', () => {
  if (here() !== shown) location.reload()
})

document.querySelector<HTMLElement>('#faults')?.focus()
setUp()

import { reencode } from './photo'
import { swap } from './swap'

let busy = false

/** The form's fields with the pressed button's, as the browser itself would send them. */
const fieldsOf = (form: HTMLFormElement, pressed: HTMLElement | null): FormData => {
  const fields = new FormData(form)
  if (pressed instanceof HTMLButtonElement && pressed.name)
    fields.append(pressed.name, pressed.value)
  return fields
}

/** Lets the browser send it; the key in the form makes a second sending harmless. */
export const sendPlainly = (form: HTMLFormElement, pressed: HTMLElement | null): void => {
  if (pressed instanceof HTMLButtonElement && pressed.name) {
    const copy = document.createElement('input')
    copy.type = 'hidden'
    copy.name = pressed.name
    copy.value = pressed.value
    form.append(copy)
  }
  form.submit()
}

const bodyOf = async (form: HTMLFormElement, pressed: HTMLElement | null): Promise<BodyInit> => {
  const fields = fieldsOf(form, pressed)
  if (form.dataset.enhance !== 'photo')
    return new URLSearchParams([...fields].map(([k, v]) => [k, String(v)]))
  for (const name of ['camera', 'file']) {
    const file = fields.get(name)
    if (file instanceof File && file.size > 0)
      fields.set(name, await reencode(file), file.name || 'photo.jpg')
  }
  return fields
}

/** Sends a form without leaving the page and puts the answer in place. Any trouble: the plain way. */
export const send = async (
  form: HTMLFormElement,
  pressed: HTMLElement | null,
  done: () => void,
): Promise<void> => {
  if (busy) return
  busy = true
  pressed?.setAttribute('aria-disabled', 'true')
  try {
    const response = await fetch(form.action, {
      method: 'POST',
      body: await bodyOf(form, pressed),
      headers: { 'x-enhance': '1' },
    })
    const isPage = (response.headers.get('content-type') ?? '').startsWith('text/html')
    const taken = response.ok || response.status === 422
    if (!isPage || !taken || !swap(await response.text())) throw new Error('not a page')
    if (response.redirected && response.url !== location.href)
      history.pushState(null, '', response.url)
    done()
  } catch {
    sendPlainly(form, pressed)
  } finally {
    busy = false
    pressed?.removeAttribute('aria-disabled')
  }
}

import morphdom from 'morphdom'

/** Whether a fold stood open when it was last drawn; since then a person may have opened or shut it. */
const drawnOpen = new WeakMap<HTMLDetailsElement, boolean>()

/** Remembers the folds of a page that came from the server. */
export const rememberFolds = (root: ParentNode): void => {
  for (const fold of root.querySelectorAll('details')) drawnOpen.set(fold, fold.open)
}

/** Forms are told apart by what they write and to what, so that nothing typed moves to another. */
const keyOf = (node: Node): string | undefined => {
  if (!(node instanceof HTMLElement)) return undefined
  if (!(node instanceof HTMLFormElement)) return node.id || undefined
  const marks = [...node.querySelectorAll<HTMLInputElement>('input[type="hidden"]')]
    .filter((box) => box.name !== 'once')
    .map((box) => `${box.name}=${box.value}`)
  return [node.getAttribute('action') ?? '', ...marks].join(' ')
}

/** What was typed or chosen and not sent stays as it is. */
const keepTyped = (from: HTMLElement, to: HTMLElement): void => {
  if (from instanceof HTMLInputElement && to instanceof HTMLInputElement) {
    if (from.type === 'checkbox' || from.type === 'radio') {
      if (from.checked !== from.defaultChecked) to.checked = from.checked
    } else if (from.type !== 'hidden' && from.value !== from.defaultValue) to.value = from.value
  }
  if (from instanceof HTMLTextAreaElement && to instanceof HTMLTextAreaElement)
    if (from.value !== from.defaultValue) to.value = from.value
  if (from instanceof HTMLSelectElement && to instanceof HTMLSelectElement)
    if ([...from.options].some((o) => o.selected !== o.defaultSelected)) to.value = from.value
  if (from instanceof HTMLDetailsElement && to instanceof HTMLDetailsElement) {
    const drawn = to.open
    if (drawn === drawnOpen.get(from)) to.open = from.open
    drawnOpen.set(from, drawn)
  }
}

/** Makes the element's contents those of the markup, touching only what differs. */
export const morphInto = (root: HTMLElement, markup: string): void => {
  const next = root.cloneNode(false) as HTMLElement
  next.innerHTML = markup
  morphdom(root, next, {
    childrenOnly: true,
    getNodeKey: keyOf,
    onBeforeElUpdated: (from, to) => {
      if (from instanceof HTMLInputElement && from.type === 'file') return false
      keepTyped(from, to)
      return !from.isEqualNode(to) || from instanceof HTMLFormElement
    },
    onNodeAdded: (node) => {
      if (node instanceof HTMLElement) rememberFolds(node)
      return node
    },
  })
}

/** Shows the copy buttons where the browser can copy, and says so when it has. */
export const setUpCopying = (root: ParentNode): void => {
  if (!navigator.clipboard) return
  for (const button of root.querySelectorAll<HTMLButtonElement>('[data-copy]')) {
    button.hidden = false
    button.onclick = async () => {
      const box = document.getElementById(button.dataset.copy ?? '')
      if (!(box instanceof HTMLInputElement || box instanceof HTMLTextAreaElement)) return
      await navigator.clipboard.writeText(box.value).catch(() => box.select())
      const status = button.parentElement?.querySelector<HTMLElement>('[data-copied]')
      if (status) status.textContent = status.dataset.copied ?? ''
    }
  }
}

import type { Child, FC } from 'hono/jsx'
import type { Frame } from './frame'

export type LayoutProps = {
  readonly frame: Frame
  readonly title: string
  /** Browser bundles by name, loaded after the page; a page without any is complete too. */
  readonly scripts?: readonly string[]
  /** More columns fit: the studio's lists and tables. */
  readonly wide?: boolean
  /** Larger targets and the strongest contrast, for a workshop. */
  readonly bench?: boolean
  readonly children?: Child
}

/** The whole document around a page: one skip link, one heading place, one accent, nothing inline. */
export const Layout: FC<LayoutProps> = ({ frame, title, scripts, wide, bench, children }) => {
  const { words, assets, studioName, logo, home, who, nav, notice, reference } = frame
  const look = [wide ? 'wide' : '', bench ? 'bench' : ''].filter(Boolean).join(' ')
  return (
    <html lang={words.formats.language} class={look || undefined}>
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="color-scheme" content="light dark" />
        <title>{`${title} · ${studioName}`}</title>
        <link rel="stylesheet" href={assets('docket.css')} />
        <link rel="icon" href="data:," />
        {(scripts ?? []).map((name) => (
          <script type="module" src={assets(name)} />
        ))}
      </head>
      <body>
        <a class="skip" href="#main">
          {words.say('page.skip')}
        </a>
        <div class="sheet">
          <div class="print-head" aria-hidden="true">
            <span>{studioName}</span>
            <span>{reference ?? ''}</span>
          </div>
          <div class="sheet-body">
            <header class="top">
              {logo ? <img class="logo" src={logo} alt="" height="32" /> : null}
              {home ? <a href={home}>{studioName}</a> : <b>{studioName}</b>}
              {who ? <span>{who}</span> : null}
            </header>
            {nav && nav.length > 0 ? (
              <nav aria-label={words.say('page.nav')}>
                <ul>
                  {nav.map((link) => (
                    <li>
                      <a href={link.href} aria-current={link.here ? 'page' : undefined}>
                        {link.text}
                      </a>
                    </li>
                  ))}
                </ul>
              </nav>
            ) : null}
            <main id="main" tabindex={-1}>
              {notice ? (
                <p class="notice" role="status">
                  {notice}
                </p>
              ) : null}
              {children}
            </main>
          </div>
        </div>
      </body>
    </html>
  )
}

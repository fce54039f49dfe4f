import type { Catalogue } from '../render'

/** What is wrong with an input, and what to do. */
export const germanErrors: Catalogue = {
  'problem.unknown': 'Hier ist nichts.',
  'problem.invalid': 'Etwas davon stimmt noch nicht.',
  'problem.not-now': 'Das geht im Augenblick nicht.',
  'problem.too-large': 'Das ist zu groß.',
  'problem.stale':
    'Jemand anderes hat das inzwischen geändert. Lesen Sie es noch einmal, dann entscheiden Sie.',
  'problem.too-many': 'Zu viele Anfragen in kurzer Zeit. Warten Sie ein wenig.',
  'problem.fault': 'Bei uns ist etwas schiefgegangen. Nichts wurde halb erledigt.',
  'error.ERR_MISSING': 'Hier fehlt noch eine Antwort.',
  'error.ERR_REQUIRED': 'Bitte füllen Sie das aus.',
  'error.ERR_VALUE': 'Diesen Wert können wir nicht annehmen.',
  'error.ERR_NOT_AN_OPTION': 'Wählen Sie eine der Antworten aus der Liste.',
  'error.ERR_TWICE': 'Dasselbe steht zweimal da.',
  'error.ERR_ALONE': 'Eine davon steht für sich. Wählen Sie diese oder die anderen.',
  'error.ERR_NOT_YES_NO': 'Antworten Sie mit Ja oder Nein.',
  'error.ERR_NUMBER': 'Schreiben Sie hier eine Zahl.',
  'error.ERR_NOT_A_NUMBER': 'Schreiben Sie eine Zahl in Ziffern.',
  'error.ERR_UNIT': 'Diese Einheit kennen wir nicht.',
  'error.ERR_OUT_OF_RANGE': 'Die Zahl sollte zwischen {min} und {max} liegen.',
  'error.ERR_NOT_A_YEAR': 'Schreiben Sie das Jahr mit vier Ziffern.',
  'error.ERR_YEAR_RANGE': 'Das Jahr sollte zwischen {min:year} und {max:year} liegen.',
  'error.ERR_NOT_MONEY': 'Schreiben Sie einen Betrag in Ziffern, ohne Währungszeichen.',
  'error.ERR_NO_SUCH_DAY': 'Diesen Tag gibt es im Kalender nicht.',
  'error.ERR_PAST': 'Dieser Tag ist vorbei.',
  'error.ERR_FUTURE': 'Das liegt in der Zukunft. Welches Jahr ist es?',
  'error.ERR_TEXT_LONG':
    'Das ist länger, als wir aufbewahren können. Bleiben Sie unter {most} Zeichen.',
  'error.ERR_CONTROL_CHARACTER':
    'Darin steht ein unsichtbares Zeichen. Tippen Sie es noch einmal von Hand.',
  'error.ERR_VIN_LENGTH': 'Eine Fahrgestellnummer hat 17 Buchstaben und Ziffern.',
  'error.ERR_VIN_CHARACTER':
    'Eine Fahrgestellnummer hat kein I, O oder Q und keine anderen Zeichen.',
  'error.ERR_NAME_MISSING': 'Sagen Sie uns, wie wir Sie ansprechen sollen.',
  'error.ERR_REACH_MISSING': 'Geben Sie uns eine E-Mail-Adresse oder eine Telefonnummer.',
  'error.ERR_EMAIL': 'An diese Adresse käme keine E-Mail an. Fehlt ein Teil?',
  'error.ERR_PHONE_DIGITS': 'Eine Telefonnummer hat {least} bis {most} Ziffern.',
  'error.ERR_OPTION_REQUIRED': 'Wählen Sie eine der Möglichkeiten.',
  'error.ERR_FILE_MISSING': 'Wählen Sie zuerst ein Bild.',
  'error.ERR_FILE_TOO_LARGE': 'Dieses Bild ist zu groß. Schicken Sie ein kleineres, bis 10 MB.',
  'error.ERR_FILE_PIXELS': 'Dieses Bild hat zu viele Bildpunkte. Schicken Sie ein kleineres.',
  'error.ERR_FILE_BROKEN': 'Dieses Bild ließ sich nicht lesen. Nehmen Sie es noch einmal auf.',
  'error.ERR_FILE_COUNT': 'Es sind jetzt genug Bilder. Nehmen Sie zuerst eines heraus.',
}

import type { Catalogue } from '../render'

/** Ends without success, and faults that are not about one question's value. */
export const problemWords: Catalogue = {
  'problem.malformed': 'That could not be read as JSON or as a form.',
  'problem.signed-out': 'Sign in first, or send a key.',
  'problem.forbidden-origin': 'This came from another site, so nothing was changed.',
  'problem.not-allowed': 'This key may not do that; the owner can.',
  'problem.not-yours': 'There is nothing here for you. The link may have ended; ask for a new one.',
  'problem.unknown': 'There is nothing here.',
  'problem.not-now': 'That cannot be done as things stand.',
  'problem.not-now.sent':
    'The enquiry has been sent, so its answers no longer change. Write to the studio instead.',
  'problem.not-now.not-doubted': 'Nobody doubts this enquiry.',
  'problem.not-now.question': 'This question is not asked as things stand.',
  'problem.not-now.missing': 'Some answers are still missing.',
  'problem.not-now.state':
    'The docket is in another state. What is possible now stands beside this.',
  'problem.not-now.no-quote': 'There is no quote to decide on.',
  'problem.not-now.other-revision':
    'The quote has changed since this page was opened. Read the new one first.',
  'problem.not-now.lapsed': 'This quote is no longer valid. Ask the studio for a new one.',
  'problem.not-now.decided': 'This has been decided already.',
  'problem.not-now.open-checks': 'Something that keeps people safe is still open.',
  'problem.not-now.in-hand':
    'The car is with the studio, which has to be able to reach its owner. Ask again once it is handed over.',
  'problem.not-now.no-date': 'There is no working time left on that day.',
  'problem.stale': 'Somebody else changed this first. Read it again, then decide.',
  'problem.too-large': 'That is too large to take.',
  'problem.wrong-type': 'This kind of content is not taken here.',
  'problem.invalid': 'Some of that is not right yet.',
  'problem.key-reused': 'This key was used before for something else.',
  'problem.key-running': 'The first request with this key is still running.',
  'problem.if-match-missing': 'Say which revision you have seen (If-Match).',
  'problem.too-many': 'Too many requests in a short time. Wait a little.',
  'problem.away': 'The docket cannot be reached just now. Nothing was lost; try again in a moment.',
  'problem.fault': 'Something went wrong on our side. Nothing was half done.',

  'error.ERR_VALUE': 'This value is not one we can take.',
  'error.ERR_MISSING': 'This is missing.',
  'error.ERR_TYPE': 'This is of the wrong kind.',
  'error.ERR_TOO_SMALL': 'This is too short or too small.',
  'error.ERR_TOO_LARGE': 'This is too long or too large.',
  'error.ERR_TOO_LONG':
    'There is room for {most} characters; this has {typed}. Shorten it: nothing was cut off.',
  'error.ERR_TOO_MANY': 'There is room for {most} lines. Put some of them together.',
  'error.ERR_CONSENT':
    'Tick the box that lets us keep your answers for the quote. Without it we cannot take them.',
  'error.ERR_UNKNOWN_FIELD': 'We do not know this field.',
  'error.ERR_ONE_OF': 'Give a value or say you are not sure, not both.',
  'error.ERR_NOT_UNSURE': 'This one we do need to know.',
  'error.ERR_FUTURE': 'That is in the future.',
  'error.ERR_IDEMPOTENCY_KEY':
    'The Idempotency-Key must be a quoted text of at most 200 characters.',
  'error.ERR_UNKNOWN_QUESTION': 'There is no such question.',
  'error.ERR_UNKNOWN_STEP': 'There is no such step in this estimate.',
  'error.ERR_UNKNOWN_KIND': 'There is no such kind of line.',
  'error.ERR_NOT_ACKNOWLEDGED':
    '{title} Tick its box once you have read it. Until then we cannot take your yes.',
  'error.ERR_OPTION_REQUIRED': 'Choose one of the options.',
  'error.ERR_NO_SUCH_OPTION': 'There is no such option in this quote.',
  'error.ERR_PAST': 'This day is over.',
  'error.ERR_TIME': 'Write the time as 08:30.',
  'error.ERR_DATE': 'Write the day as YYYY-MM-DD.',
  'error.ERR_PLACES':
    'Keep the places in braces as they are in the sentence above; a message needs its link.',
  'error.ERR_HARD_LIMIT': 'From {min} to {max}: nobody goes past that.',
  'error.ERR_BEYOND_CAP':
    'Nothing allows that on this panel, whoever decides. Choose less, or leave it.',
  'error.ERR_NEEDS_WORD':
    'That is more than this panel allows by itself. Ask the owner and write the answer down first.',
  'error.ERR_BEYOND_ALLOWANCE': 'That is more than this panel allows. Choose less, or stop here.',
  'error.ERR_PASTED_PANEL': 'Line {line}: no panel of this car has that name ({text}).',
  'error.ERR_PASTED_VALUES':
    'Line {line}: after the name write readings in µm, from 1 to 5000 ({text}).',
  'error.ERR_PACE': 'From 25 to 400 per cent.',
  'error.ERR_OWN_STEP': 'One a line: name; minutes; price. The price may be left out.',
  'error.ERR_TEAM': 'One a line: name; owner or bench.',
  'error.ERR_LOGO_TOO_LARGE': 'This picture is too large for a heading. At most 30 kB.',
  'error.ERR_REQUIRED': 'Please fill this in.',
  'error.ERR_FILE_MISSING': 'Choose a picture first.',
  'error.ERR_FILE_TYPE':
    'Only JPEG, PNG and WebP pictures can be taken. Many phones can save as JPEG.',
  'error.ERR_FILE_HEIC':
    'This phone keeps its pictures in a form browsers cannot show (HEIC). Take it with the camera button here, or set the phone’s camera to “most compatible”, which makes JPEG.',
  'error.ERR_FILE_TOO_LARGE': 'This picture is too large. Send a smaller one, up to 10 MB.',
  'error.ERR_FILE_PIXELS': 'This picture has too many pixels. Send a smaller one.',
  'error.ERR_FILE_OTHER':
    'This is not the picture that belongs here. Take it from the same export.',
  'error.ERR_ID_TAKEN':
    'This id belongs to something else already. Send it under an id of its own.',
  'error.ERR_LINES_INCOMPLETE':
    'The lines of this docket are not whole: they must run from its opening on without a gap.',
  'error.ERR_AMOUNT_TOO_LARGE':
    'This amount is larger than can be added up exactly. Look for a digit too many.',
  'error.ERR_FILE_BROKEN': 'This picture could not be read. Take it again.',
  'error.ERR_FILE_COUNT': 'There are enough pictures now. Remove one first.',
}

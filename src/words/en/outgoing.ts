import type { Catalogue } from '../render'

/** Words of what goes out: what the studio has to send itself, and messages to its own system. */
export const outgoingWords: Catalogue = {
  'nav.to-send': 'To send',
  'page.to-send': 'To send',
  'page.to-send.none': 'Nobody waits for a word from you.',
  'page.to-send.lead':
    'Nothing is sent from here. Take the message with its link, send it your own way, and mark it; what the customer answers goes by itself.',
  'page.to-send.since': 'since {date:date}',
  'page.to-send.message': 'Show the message',
  'page.told.message': 'I have sent it',
  'page.told.phone': 'Told on the phone',
  'page.message.not-sent':
    'Nothing has left yet. Paste it, or write it with a button above; then mark it, so that it leaves the list of what is to be sent.',
  'page.tell.quote': 'The quote is open to them.',
  'page.tell.question': 'Asked again: {question}',
  'page.tell.look-over': 'A look-over is offered.',
  'page.tell.turned-down': 'The job is turned down, with the reason.',
  'page.tell.reply': 'Their question has a reply.',
  'page.tell.extra': 'Extra work waits for a yes or a no.',
  'page.tell.day': 'The day their car comes.',
  'page.tell.smaller': 'Measuring shrank the result: shall we go on?',
  'page.hook': 'To your own system',
  'page.hook.lead':
    'What happens to a docket can be told to a program of yours: signed messages by Standard Webhooks, without names or numbers, each at least once. The list above needs none of this.',
  'page.hook.none': 'No address is set, so nothing goes out.',
  'page.hook.on': 'Messages go to this address since {date:date}.',
  'page.hook.off':
    'The address set on {date:date} said that it is gone, so nothing goes out. Set it again to go on.',
  'page.hook.counts':
    '{waiting|One message waits|# messages wait} to be taken; {dead|one was|# were} given up after three days of trying.',
  'page.hook.url': 'Address of your program',
  'page.hook.url.hint': 'https and a public name, such as https://studio.example/hook.',
  'page.hook.set': 'Set the address',
  'page.hook.renew': 'New secret',
  'page.hook.test': 'Put a test message in line',
  'page.hook.end': 'End it',
  'page.hook.secret.lead':
    'This is the secret your program checks the signatures with. It is shown this once.',
  'page.hook.secret': 'Secret',
  'error.ERR_HOOK_URL': 'This is no address. Write it whole, such as https://studio.example/hook.',
  'error.ERR_HOOK_HTTPS': 'Messages go over https on its usual port only.',
  'error.ERR_HOOK_USER':
    'Leave user and password out of the address; the signature takes their place.',
  'error.ERR_HOOK_HOST':
    'This leads into a machine or a private network. Give a public name, not a number.',
}

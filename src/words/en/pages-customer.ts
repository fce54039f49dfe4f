import type { Catalogue } from '../render'

/** What the owner of the car reads besides questions, range and quote: links, the day, afterwards. */
export const customerWords: Catalogue = {
  'photo.front': 'front',
  'photo.front.how': 'In shade, the whole car from the front corner.',
  'photo.rear': 'back',
  'photo.rear.how': 'In shade, the whole car from the back corner.',
  'photo.left': 'left side',
  'photo.left.how': 'In shade, level with the door handles.',
  'photo.right': 'right side',
  'photo.right.how': 'In shade, level with the door handles.',
  'photo.sun-flank': 'one side in the sun',
  'photo.sun-flank.how':
    'In direct sun, an arm’s length away, so that the sun’s mirror image is in it.',
  'photo.sun-bonnet': 'bonnet in the sun',
  'photo.sun-bonnet.how': 'In direct sun, the sun’s mirror image in the paint.',
  'photo.film-edge': 'edge of the film',
  'photo.film-edge.how': 'A hand’s width away, sharp on the edge. Do not lift it.',
  'photo.jamb': 'door opening',
  'photo.jamb.how': 'The painted frame inside an open door.',
  'photo.seats': 'seats',
  'photo.seats.how': 'All of them from one open door, without a flash.',
  'photo.carpet': 'carpet',
  'photo.carpet.how': 'With the mat lifted, the dirtiest or wettest place.',
  'photo.boot-well': 'well under the boot floor',
  'photo.boot-well.how': 'Lift the boot floor; show the lowest point.',
  'photo.damp-coin': 'damp place with a coin',
  'photo.damp-coin.how': 'A coin beside it, not on it. Do not wipe, and wash your hands.',
  'photo.other.how': 'Whatever worries you, close up.',
  'page.photo.guide':
    'These would help most with this car. Send as many as you like, in any order.',
  'page.photo.have': '{n|one here|# here}',
  'page.photo.subject': 'What it shows',
  'page.photo.camera': 'Take it now with the camera',
  'page.photo.lost-nothing': 'Your answers are kept whatever happens to a picture.',
  'page.leave.make': 'Make me a private link',
  'page.leave.make.lead':
    'To go on with another device, or later when this browser has forgotten you, make a private link.',
  'page.leave.until':
    'It works until {date:date}, as often as you like, on any device. When it is old or lost, ask the studio: it can send you a new one, and nothing you told is lost by that.',
  'page.range.after-review.days':
    'A person reads every word and answers with a price and the days it takes. Until then, this is what we understood.',
  'page.problem.old-link':
    'A private link ends after 180 days, or when the data behind it was deleted. Ask the studio for a new one: it can make one for you at once, and your answers stay as they are.',
}

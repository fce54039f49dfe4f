import type { Hand } from './act'

type Decision = { readonly what: string; readonly act: (hand: Hand) => Promise<void> }

/** What a detailer decided on each enquiry after reading its page, and how it was done. */
export const DECISIONS: Readonly<Record<string, Decision>> = {
  'estate with a dog': {
    what: 'Nothing stands against it. Sent as it is.',
    act: (hand) => hand.press('Send it as it is'),
  },
  'black saloon for a wedding on Friday': {
    what: 'A show finish does not hold until Friday. One light set instead of a cut, tried first, then sent with a word.',
    act: async (hand) => {
      await hand.open('How deep each panel is polished')
      await hand.choose('[name=level]', 'light')
      await hand.type('[name=level-why]', 'Until Friday')
      await hand.press('Try without saving')
      await hand.type(
        '[name=message]',
        'A full correction needs more days; this is what Friday allows.',
      )
      await hand.press(/^Save and send/)
    },
  },
  'old saloon with lettering on a repaint': {
    what: 'Film on a repaint may lift paint: a picture of the doors first, before any price.',
    act: async (hand) => {
      await hand.open('Ask the customer again')
      await hand.choose('[name=question]', 'photos')
      await hand.type('#f-ask-again', 'Both doors, close, with the edges of the letters.')
      await hand.press('Ask again')
    },
  },
  'hatchback with a wet carpet': {
    what: 'No price while the leak is unknown: a paid look-over.',
    act: async (hand) => {
      await hand.open('Offer a look-over')
      await hand.type('[name=look-amount]', '60')
      await hand.press('Offer it')
    },
  },
  'van with mould under the carpet': {
    what: 'Beyond what is cleaned in a car, and somebody in the house is unwell: turned down, with where to turn.',
    act: async (hand) => {
      await hand.open('Turn it down')
      await hand.press('Turn it down')
    },
  },
  'matte coupe that wants polish': {
    what: 'Matte is not polished; what is left is a wash and a coat. Sent with a word that says so.',
    act: async (hand) => {
      await hand.type(
        '[name=message]',
        'Matte paint would shine where it is polished, so we clean and protect it.',
      )
      await hand.press(/^Save and send/)
    },
  },
  'convertible with a green roof': {
    what: 'A regular: five per cent off, and it is sent.',
    act: async (hand) => {
      await hand.type('[name=discount-share]', '5')
      await hand.type('[name=whole-why]', 'Comes every spring')
      await hand.press(/^Save and send/)
    },
  },
  'two-year-old family car, budget named': {
    what: 'The budget does not carry all three. The polish is left out by level, tried, and the difference told.',
    act: async (hand) => {
      await hand.open('How deep each panel is polished')
      await hand.choose('[name=level]', 'none')
      await hand.type('[name=level-why]', 'To stay near the budget')
      await hand.press('Try without saving')
      await hand.type(
        '[name=message]',
        'Without polishing, to stay near what you named. We can add it.',
      )
      await hand.press(/^Save and send/)
    },
  },
  'nobody knows anything': {
    what: 'The range is too wide to send. The dangers are asked again in plain words.',
    act: async (hand) => {
      await hand.open('Ask the customer again')
      await hand.choose('[name=question]', 'dangers')
      await hand.type('#f-ask-again', 'Please walk once round the car and tick what you see.')
      await hand.press('Ask again')
    },
  },
}

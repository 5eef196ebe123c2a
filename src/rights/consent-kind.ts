/**
 * What a club may ask a guardian to agree to, and the words it asks in unless it writes its own. Which of these need
 * consent at all, and in which words, is for local law and the club's own adviser: common practice, no source.
 */
export const consentKinds = [
  {
    kind: 'picturesInside',
    name: 'Pictures for the club only',
    wording:
      'The club may take pictures and films of my child at practices and matches, and show them inside the club. It does not publish them.',
  },
  {
    kind: 'picturesOutside',
    name: 'Pictures that anybody can see',
    wording:
      'The club may publish pictures and films of my child on its own pages and in the local paper, without my child’s name.',
  },
  {
    kind: 'nameOutside',
    name: 'Name on lists outside the club',
    wording:
      'The club may write my child’s name on team sheets and reports that other clubs and the league can read.',
  },
  {
    kind: 'handOver',
    name: 'Figures to another club',
    wording:
      'If my child changes clubs, the club may hand over its figures of my child’s turns to the new club, after asking me again.',
  },
  {
    kind: 'messages',
    name: 'Messages from the club',
    wording:
      'The club may write to me about news that has nothing to do with my child’s practices and matches.',
  },
] as const

export type ConsentKind = (typeof consentKinds)[number]['kind']

export const consentWordingLimit = 2000

/** A kind that was kept long ago and is asked for no more shows as it was written. */
export function consentName(kind: string): string {
  return consentKinds.find((one) => one.kind === kind)?.name ?? kind
}

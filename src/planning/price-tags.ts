import type { AgreedToday, PlanLock, PlanRequest } from '#planning/practice-plan'
import { isInSides, keepsOneSide } from '#planning/side-lists'
import type { PlayerId } from '#squad/player'

/** A rule of a plan with the request that leaves it out: what the rule costs is the difference. */
export type PricedRule = {
  readonly key: string
  /** The rule in a coach's words, with a capital. */
  readonly words: string
  readonly without: PlanRequest
}

/** Every rule of a request that can be left out by itself. */
export function pricedRules(request: PlanRequest, nameOf: (id: PlayerId) => string): readonly PricedRule[] {
  const { rules, locks, apart, design } = request
  const expected = new Set(request.players.map(({ playerId }) => playerId))
  const own: PricedRule[] = []
  if (rules.restLimit !== null)
    own.push({
      key: 'restLimit',
      words: `Nobody waits more than ${rules.restLimit === 1 ? 'one turn' : `${rules.restLimit} turns`} in a row`,
      without: { ...request, rules: { ...rules, restLimit: null } },
    })
  if (isInSides(request))
    own.push({
      key: 'sides',
      words: 'Everyone keeps to their side',
      without: { ...request, rules: { ...rules, keepsSides: false } },
    })
  design.rounds.forEach((round, index) => {
    if (!round.keepersStay || round.stations.every(({ keep }) => keep === 0)) return
    const rounds = design.rounds.map((other, at) => (at === index ? { ...other, keepersStay: false } : other))
    own.push({
      key: `keepersStay ${index}`,
      words: `One goalkeeper all through round ${index + 1}`,
      without: { ...request, design: { ...design, rounds } },
    })
  })
  for (const [one, other] of apart) {
    if (!expected.has(one) || !expected.has(other)) continue
    own.push({
      key: `apart ${one} ${other}`,
      words: `${nameOf(one)} and ${nameOf(other)} kept apart`,
      without: { ...request, apart: apart.filter((pair) => pair[0] !== one || pair[1] !== other) },
    })
  }
  for (const player of request.players) {
    const { waitsAfterEachTurn, mostTurns, playerId } = player
    // Who may be in goal decides what everyone is due: with another answer the two plans could not be compared.
    if (!waitsAfterEachTurn && mostTurns === null) continue
    const free = { ...player, waitsAfterEachTurn: false, mostTurns: null }
    own.push({
      key: `player ${playerId}`,
      words: `Fewer turns for ${nameOf(playerId)} today`,
      without: {
        ...request,
        players: request.players.map((other) => (other === player ? free : other)),
      },
    })
  }
  own.push(...pricedAgreements(request, nameOf))
  for (const lock of locks)
    if (!lock.agreed)
      own.push({
        key: `lock ${lock.turn} ${lock.playerId}`,
        words: `${nameOf(lock.playerId)} held fast in turn ${lock.turn}`,
        without: { ...request, locks: locks.filter((other) => other !== lock) },
      })
  return own
}

/** What was agreed, each without the places it holds. What is due by agreement has no price: it is another measure. */
function pricedAgreements(request: PlanRequest, nameOf: (id: PlayerId) => string): readonly PricedRule[] {
  return request.players.flatMap((player): readonly PricedRule[] => {
    const { playerId, agreed } = player
    const name = nameOf(playerId)
    const without = (change: AgreedToday, isFree: (lock: PlanLock) => boolean = () => false) => ({
      ...request,
      players: request.players.map((other) =>
        other === player ? { ...player, agreed: { ...agreed, ...change } } : other,
      ),
      locks: request.locks.filter((lock) => !isFree(lock)),
    })
    const tag = (key: string, words: string, asked: PlanRequest): PricedRule => ({
      key: `${key} ${playerId}`,
      words,
      without: asked,
    })
    const isOneSided = keepsOneSide(player) && !isInSides(request)
    const shown = (lock: PlanLock) => lock.agreed === 'shown' && lock.playerId === playerId
    const partners = [playerId, agreed?.firstPartner]
    const beside = (lock: PlanLock) => lock.agreed === 'partner' && partners.includes(lock.playerId)
    return [
      ...(isOneSided
        ? [tag('sameSide', `${name} on one side all practice`, without({ sameSide: false }))]
        : []),
      ...(agreed?.neverWaitsAlone
        ? [tag('neverAlone', `${name} never waits alone`, without({ neverWaitsAlone: false }))]
        : []),
      ...(request.locks.some(beside) && agreed?.firstPartner
        ? [
            tag(
              'partner',
              `${name} begins beside ${nameOf(agreed.firstPartner)}`,
              without({ firstPartner: null }, beside),
            ),
          ]
        : []),
      ...(request.locks.some(shown)
        ? [tag('shown', `${name} as shown`, without({ planShownEarly: false }, shown))]
        : []),
    ]
  })
}

/** What is known of a plan, or of the best without a rule, in seconds². */
export type Worth = { readonly value: number; readonly bound: number }

export type Price =
  /** Nothing fairer would be possible without it. */
  | { readonly kind: 'free' }
  /** So much of 1 less even, exactly. */
  | { readonly kind: 'costs'; readonly share: number }
  /** No more than that. */
  | { readonly kind: 'atMost'; readonly share: number }
  | { readonly kind: 'unknown' }

const noise = 1e-6

/** A rule's price from a plan with it and what was found without it. A plan with the rule is one without it, too. */
export function priceOfRule(withRule: Worth, without: Worth): Price {
  const best = Math.min(withRule.value, without.value)
  if (withRule.value - without.bound <= noise * Math.max(1, withRule.value)) return { kind: 'free' }
  if (without.bound <= 0 && best > noise) return { kind: 'unknown' }
  const isKnown = best - without.bound <= noise * Math.max(1, best)
  const least = isKnown ? best : without.bound
  if (least <= noise) return { kind: 'unknown' }
  return { kind: isKnown ? 'costs' : 'atMost', share: withRule.value / least - 1 }
}

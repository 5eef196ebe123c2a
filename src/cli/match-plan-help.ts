/** The whole of both files, for who writes one by hand or by a program. */
export const matchPlanHelp = `Reads turnbook/match-request@1 and writes turnbook/match-plan@1, or turnbook/impossible@1 with exit code 3. Needs no database.
All times are whole seconds of playing time from the first kick-off: the periods stand end to end, breaks left out.

The request:
{ "format": "turnbook/match-request@1",
  "periods": [1200, 1200],
  "places": { "keeper": 1, "back": 2, "middle": 3, "forward": 1 },
  "changeEvery": 300,
  "players": [ { "id": "p01", "keeps": true, "present": [[0, 2400]],
      "gap": { "play": -240, "keep": 0, "starts": -0.5 }, "least": 1200, "most": null,
      "lines": { "back": "likes", "middle": "learning", "forward": "notYet" },
      "met": { "back": 600, "middle": 0, "forward": 0 } } ],
  "fewerWhereTooFew": false, "leastShare": 0.5,
  "rules": { "keeperForPeriod": true, "mostKeeperPeriods": null, "leastSpell": 300, "longestSpell": null,
      "longestOff": null, "mostChanges": null, "mostSubstitutions": null, "mayReturn": true },
  "apart": [["p01", "p02"]], "together": [["p03", "p04"]],
  "fixed": [ { "player": "p01", "from": 0, "to": 1200, "place": "keeper" } ],
  "tradeOffs": true, "seed": 1, "timeLimitMs": 2000, "workLimit": null }
Needed: format, periods, places with a place in it, players with ids. May be left out, with what then holds:
  changeEvery      when players may change, counted from the start of each period; null: at breaks only. Or marks, a list for
                   each period of its seconds, such as [[400, 800], []]. Neither: times that suit the number of players.
  keeps            true: may be put in goal.
  present          there throughout. A player plays in the time between two changes only where there for all of it.
  gap              0 each: what was had of earlier matches less what was due; negative: still owed. Seconds on, seconds in
                   goal, starts.
  least            leastShare of the time for which the player is there: what it is promised. most: no limit.
  lines            open each. likes and learning are wishes; notYet is a rule. met: seconds in each line so far, 0 each.
  fewerWhereTooFew false: with fewer there than places the request is impossible. true: then as many play as are there.
  leastShare       0: nothing is promised.
  rules            none: keeperForPeriod false, leastSpell 0, mayReturn true, the others null. leastSpell is the least time on
                   before coming off inside a period; longestSpell and longestOff are of one period, goal aside;
                   mostChanges counts who comes on inside periods, mostSubstitutions at breaks too.
  apart, together  none: never on at the same time; on at the same time where it costs nothing else.
  fixed            none. place: keeper, back, middle, forward, on or off; it holds for every time between two changes that it
                   touches.
  tradeOffs        true: what fewer changes would cost is worked out too.
  seed 1, timeLimitMs 2000 (a ceiling, counted from when the input was read), workLimit null (in units of its own; with one,
                   the same input gives the same bytes but for elapsedMs). Where no line-up is found at once, whether
                   there is one may take up to 20 seconds more.

The answer:
{ "format": "turnbook/match-plan@1",
  "windows": [ { "period": 1, "start": 0, "end": 300, "keeper": ["p05"], "back": ["p01", "p02"], "middle": ["p03", "p04",
      "p06"], "forward": ["p07"], "off": ["p08"], "absent": [] } ],
  "spells": [ { "player": "p01", "line": "back", "start": 0, "end": 600 } ],
  "changes": [ { "at": 300, "period": 1, "isBreak": false, "off": ["p01"], "on": [ { "player": "p08", "line": "back" } ],
      "moved": [ { "player": "p03", "from": "middle", "to": "forward" } ] } ],
  "players": [ { "id": "p01", "seconds": 1800, "keepSeconds": 0, "starts": 1, "lineSeconds": { "back": 1800, "middle": 0,
      "forward": 0 }, "fair": { "play": 1866.7, "keep": 266.7, "starts": 0.8 }, "gapAfter": { "play": -66.7, "keep": -266.7,
      "starts": 0.2 }, "least": 1200, "isLeastKept": true } ],
  "goals": { "promise": { "value": 0, "bound": 0, "proven": true }, "minutes": {}, "goal": {}, "starts": {}, "lines": {},
      "changes": {} },
  "equalTime": { "changes": 8 },
  "sentence": "…",
  "tradeOffs": [ { "changes": 6, "fewer": 2, "players": 1, "seconds": 240, "short": 0, "worse": ["minutes"], "proven": true,
      "spells": [], "sentence": "…" } ],
  "waysOut": [ { "rule": "mostChanges", "path": "rules.mostChanges", "short": { "value": 0, "bound": 0, "proven": true },
      "spells": [], "sentence": "…" } ],
  "elapsedMs": 0 }
changes hold a time only where somebody comes on, goes off or moves. fair is what the season book will hold to be due of this
match; gapAfter = gap + what is had - fair.
goals, in their order, less is better; each is judged among the line-ups that are best in those before it, and its bound holds
for them. promise: seconds short of least, over all. minutes: sum of gapAfter.play squared. goal: the same of keep, over those
who may keep. starts: the same of starts. lines: seconds in an open line beyond a player's room there (what it is due of this
match, and what it is behind an even share of that line over the term, or less what it is ahead), and 600 for each move from
line to line inside a period.
changes: who comes on inside periods. proven: value - bound is at most 1e-6 x max(1, value).
equalTime: fewest changes with which all could play exactly as long, S - gcd(S, m x n) for S players, n on and m periods; null
where all are not there throughout, or not due the same.
tradeOffs: the fairest line-ups with fewer changes: how many players are further from what they are due, by how many seconds at
most, how many seconds more of least are missed, and which goals are met less well; proven: none with so few changes is more even.
waysOut, where something of least is missed: what is missed, in seconds, with one rule let go; the best first.

Impossible: { "format": "turnbook/impossible@1", "requirements": [ { "rule": "places", "path": "places", "from": 0, "to": 2400,
"why": "…" } ], "waysOut": [], "nearest": (a request that works, with as little let go as was found, or null) }. rule: places, keepers, lines,
leastSpell, longestSpell, longestOff, mostKeeperPeriods, most, least, fixed, apart, together or rules.`

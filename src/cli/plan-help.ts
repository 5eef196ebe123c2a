/** The whole of both files, for who writes one by hand or by a program. */
export const planHelp = `Reads turnbook/plan-request@1 and writes turnbook/plan@1, or turnbook/impossible@1 with exit code 3. Needs no database.
What a squad's own term asks is written by: turnbook export --what ahead. Times are whole seconds, days like 2026-09-01, both ends of
from and to belong to it. Weeks are those of the term: the one that its first day lies in is 1, and weeks begin on Mondays.

The request:
{ "format": "turnbook/plan-request@1",
  "term": { "from": "2026-09-07", "to": "2026-12-18" },
  "policy": { "toleranceSeconds": 600, "toleranceShare": 0.15 },
  "practices": [ { "id": "s1", "date": "2026-11-03", "lengthSeconds": 3600, "ground": { "lengthM": 40, "widthM": 30 },
      "held": { "theme": "press", "design": "d1" } } ],
  "closed": [ { "from": "2026-10-26", "to": "2026-10-30" } ],
  "themes": [ { "id": "press", "name": "Win it back", "parent": null, "share": 0.25, "firstWeek": 1, "lastWeek": null,
      "after": null, "leastWeeksBetween": 2, "mostWeeksBetween": 4 } ],
  "blocks": [ { "theme": "press", "firstWeek": 9, "lastWeek": 10 } ],
  "designs": [ { "id": "d1", "name": "Two goals", "themes": ["press"], "lengthM": 30, "widthM": 20, "rounds": [ { "turnCount": 10,
      "turnSeconds": 90, "gapSeconds": 20, "stations": [ { "attack": 3, "defend": 3, "keep": 1 } ], "freeGame": false } ] } ],
  "met": [ { "date": "2026-10-20", "themes": ["press"], "design": "d1" } ],
  "players": [ { "id": "p01", "keeps": true, "came": 7, "held": 8, "away": [ { "from": "2026-11-09", "to": "2026-11-20" } ],
      "gap": { "attack": -240, "defend": 120, "keep": 60, "rest": 60, "outnumbering": 0, "level": 0, "outnumbered": 0 },
      "fair": { "attack": 3000, "defend": 3000, "keep": 900, "rest": 1500, "outnumbering": 900, "level": 3000, "outnumbered": 900 },
      "playedSeconds": 6900, "themeSeconds": { "press": 1800 } } ],
  "designRest": 2, "gentle": { "least": 0.6, "most": 1.4 },
  "alternatives": true, "draws": 2000, "seed": 1, "timeLimitMs": 10000, "workLimit": null }
Needed: format, term, practices to come in order of time, themes, designs and players with ids. A design needs themes (those it
serves; those above them are met with them), its size and rounds. May be left out, with what then holds:
  policy           toleranceSeconds 600, toleranceShare 0.15: what a gap may be, the larger of the two (a share of fair).
  lengthSeconds    null: as long as the design takes. A shorter practice leaves out turns at the end.
  ground           null: large enough for any design. Designs fit either way round.
  held             null: anything. Else its theme and design; without a design its theme, or one under it.
  closed           none: days without practice; practices on them are left out.
  parent           null: at the top. A practice of a theme is one of all it stands under.
  share            0: the wished part, 0-1, of everyone's own time played. A theme with share or a rule is of the programme; only
                   those, those that blocks and rules name, and all under them are chosen. Without any: all themes.
  firstWeek, lastWeek, after, leastWeeksBetween, mostWeeksBetween
                   no rule. after: a theme that was met in an earlier practice. leastWeeksBetween 2: not in the next week, but in
                   a block of its own. mostWeeksBetween: once met it comes back by then, while a practice to come could be of it.
  blocks           none: weeks in which only that theme, and those under it, are met.
  gapSeconds       0 between two turns of a round. stations: 0 of what is not said. freeGame false: two halves with roles swapped.
  met              none: practices of the term that were held, in order of time.
  keeps            true: may be put in goal. came, held 0: practices of this term. away: none.
  gap, fair        0 each: of the season's practices, what was had less what was due, and what was due.
  playedSeconds    0: time played, not waited, in this term. themeSeconds: of it in each theme, those under it included.
  designRest       0: a design is not chosen again in so many practices after it, or so many before one that is held with it.
  gentle           0.6 and 1.4: nobody gets less or more than so many times its even share of a kind of place over all practices.
  alternatives     true: other themes for the first practice not held are planned too, each with what it costs.
  draws            null: not asked. Else the rest of the term is played through so often to say how likely each ends inside;
                   that comes on top of timeLimitMs, as its answer must not depend on the clock. Its progress is told.
  seed 1, timeLimitMs 10000 (a ceiling, counted from when the input was read), workLimit null (in units of its own; with one,
                   and time enough, the same input gives the same bytes but for elapsedMs).

How it is reckoned. The chance to come is each player's own record drawn towards the squad's (James-Stein, for unequal counts by
Morris 1983, positive part; with fewer than four records, or none that differ, the squad's); 0 while away. Designs are made
smaller or larger for as many as are expected, as the day's plan would. Seats are attackOutnumbering, attackLevel,
attackOutnumbered, attackAlone, the same of defend, and keep. An even share: keeping by the chance to come among those who may
keep; all else by what that leaves of the time each is expected to be there. A lean is what a player gets beyond it (negative:
less); in each practice the leans of a seat add up to 0. gapAfter = gap + leans; who sits more waits less.
value.balance: minutes of all gaps of the seven columns, too few or too many. value.themes: minutes short of each share. In both a
minute beyond its tolerance counts ten times (a theme's tolerance is toleranceSeconds). value.value is their sum, and less is
better. All of it is what is to be expected, not what will be: who comes is not known.

The answer:
{ "format": "turnbook/plan@1",
  "practices": [ { "id": "s1", "date": "2026-11-03", "week": 9, "theme": "press", "design": "d1", "isFirm": true, "isHeld": true,
      "sentence": "…", "favours": [ { "player": "p01", "column": "attack", "seconds": 120 } ], "liveSeconds": 900,
      "seats": { "attackLevel": 2700, "defendLevel": 2700, "keep": 900 },
      "players": [ { "id": "p01", "comes": 0.86, "lean": { "attackLevel": 120, "defendLevel": -90 } } ] } ],
  "leftOut": [ { "id": "s9", "date": "2026-10-27" } ],
  "players": [ { "id": "p01", "columns": { "attack": { "gap": -240, "gapAfter": -20, "tolerance": 600, "within": true,
      "reachable": "yes", "inside": true }, "defend": {}, "keep": {}, "rest": {}, "outnumbering": {}, "level": {}, "outnumbered": {} },
      "playedSeconds": 14200, "themes": { "press": { "seconds": 3400, "due": 3550, "tolerance": 600, "inside": true } } } ],
  "themes": [ { "id": "press", "share": 0.25, "met": 2, "planned": 3 } ],
  "value": { "balance": 41.5, "themes": 12, "value": 53.5, "bound": 52.1, "proven": false },
  "leastOutside": { "value": 0, "bound": 0, "proven": true },
  "sentence": "…",
  "alternatives": [ { "practice": "s1", "theme": "finish", "design": "d2", "costs": 0.8, "value": { "value": 54.3, "bound": 52.1,
      "proven": false }, "practices": [ { "id": "s1", "theme": "finish", "design": "d2" } ], "sentence": "…" } ],
  "chances": { "isExact": false, "played": 2000, "plan": { "everyone": { "chance": 0.41, "low": 0.39, "high": 0.43, "word": "even" },
      "meanInside": { "all": 14.1, "seats": 14.8 }, "players": [ { "id": "p01", "all": { "chance": 0.9, "low": 0.88, "high": 0.91,
      "word": "likely" }, "seats": {}, "themes": {}, "columns": { "attack": {} }, "byTheme": { "press": {} } } ] }, "carryOn": {},
      "hardest": { "practice": "s1", "by": "inside", "fewerInside": { "mean": 1.2, "low": 1.1, "high": 1.3 },
      "fewerInSeats": {}, "moreSecondsOutside": {} } },
  "elapsedMs": 0 }
isFirm: the next four practices; the rest is a sketch, to be planned anew after each practice. favours: who gets more of what it
is short of. seats: of all players together, for as many as are expected. leftOut: practices on days without practice.
within: gapAfter is no further from 0 than the tolerance. reachable: whether any plan can bring that column there, at whatever
cost for the others: yes, no (proven), or open (not found in time). leastOutside: minutes beyond the tolerances, all players and
columns together, that the best plan for that alone comes to; null where no time was left for it. inside, as chances has it: not
beyond the tolerance on the side that raises a flag: too much of keep and rest, too little of all else.
value.bound: no plan that keeps the rules has less; proven: value - bound is at most 1e-6 x max(1, value). alternatives: the best
plans found with another theme in the first practice that is not held, the cheapest first; costs: minutes that they are worse.
chances: with draws; null without. word: likely from two thirds, unlikely up to one third. low and high: 95 in 100. carryOn: the
same players come, all is shared and the themes are met as so far; null where nothing was played. hardest: the practice whose
loss costs most; null where none surely costs anything.

Impossible: { "format": "turnbook/impossible@1", "requirements": [ { "rule": "held", "path": "practices[0].held", "with": [ { "rule":
"after", "path": "themes[1].after" } ], "practice": "s1", "theme": "t2", "why": "…" } ], "nearest": (a request that works, with as
little let go as was found, or null) }. rule: offered, held, firstWeek, lastWeek, after, leastWeeksBetween, mostWeeksBetween, block
or designRest; with: the rules that stand against it.`

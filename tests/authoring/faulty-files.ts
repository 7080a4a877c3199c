import { fileOf, type WrittenFile } from './files.js'

/** A rule with many mistakes, each on a line of its own. */
export const faultyRule: WrittenFile = fileOf(
  'rules/vent/garage-height.yaml',
  `title: A vent termination in a garage wall stands high
subject: ventTermination
from: design
when: { ventTermination.serbes: exhaust }
measure: { fact: ventTermination.heightAboveGrade, operator: atleast }
demands:
  - id: garage
    severity: must
    require: { ventTermination.heightAboveGrade: { atLeast: 18 psi } }
    basis: [{ source: practice, ground: practice, known: recalled }]
  - id: garage
    severity: should
    require: { site.snowLine: { atLeast: 2 in } }
    basis: [{ source: practise, ground: practice, known: recalled }]
say: { fail: "{id} stands {ventTermination.heightAboveGrad} high." }
because: Cars hit it.
remedi: Raise it.
given: { ventTermination.serves: exhausts }
examples:
  - { name: high, facts: { ventTermination.heightAboveGrade: 20 in }, expect: pass }
  - { name: low, facts: { ventTermination.heightAboveGrade: 5 }, expect: { fail: shoud } }
  - { name: lost, facts: { ventTermination.heightAboveGrad: 5 in }, expect: undecidet }
`,
)

/** A town's file with many mistakes, each on a line of its own. */
export const faultyTown: WrittenFile = fileOf(
  'shared/overlays/mistakes.yaml',
  `overlay: mistakes
authority: { name: Town of Mistakes, layer: town }
written: { by: a test, official: true, lastVerified: 2025-05-01 }
basis: { source: harrowmere-code, ground: code, known: read }
changes:
  - { demnad: vent/termination-height, severity: must, value: 30 in, nature: amendment, clause: 1-1 }
  - { demand: vent/termination-heigth, severity: must, value: 30 in, nature: amendment, clause: 1-2 }
  - { demand: vent/termination-height, id: unit, severity: must, value: 30 psi, nature: amendment, clause: 1-3 }
  - { exempt: vent/termination-height, of: [grade], nature: amendment, clause: 1-4 }
  - { demand: vent/termination-height, id: dates, severity: must, value: 30 in, nature: amendment, clause: 1-5,
      effective: { from: 2024-07-01, until: 2024-01-01, by: applicationDate } }
  - { demand: vent/termination-height, id: uncited, severity: must, value: 30 in, nature: amendment }
  - { demand: hot-water/outlet-limit, severity: must, value: 115 F, nature: verbal-habit, clause: 1-7 }
  - { add: { id: fill/sign, title: The fill has a sign, subject: fillValve, because: People shut it.,
             demands: [{ id: sign, severity: should, require: { fillValve.position: open },
                         basis: [{ source: practice, ground: practice, known: recalled }] }],
             say: { fail: "{id} is shut." },
             examples: [{ name: open, facts: { fillValve.position: open }, expect: pass },
                        { name: shut, facts: { fillValve.positon: closed }, expect: { fail: should } }] },
      nature: amendment, clause: 1-8 }
`,
)

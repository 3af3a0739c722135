import type { Sheet } from '../sheet.ts';

/** Work spoken of as a thing. */
export const DEEDS: Sheet[] = [
  {
    kind: 'work',
    lines: `inspection; inspections
rough inspection; framing inspection, rough-in inspection
final inspection
punch walk; walkthrough, walk through
change order; co
pressure test; leak test, air test, water test, smoke test
flood test
blower door; blower door test
delivery; drop off
pickup
demolition; tear out, tear off
regrouting
touching up
electrical rough; plumbing rough, hvac rough, mechanical rough, rough electrical, rough plumbing, rough mechanical
electrical final; plumbing final, building final, final electrical, final plumbing, final mechanical
gas test; hydro test, hydrostatic test, duct test, blower test, load test, slump test, moisture test, compaction test, radon test, backflow test, flow test
sewer scope; duct leakage test
reinspection; reinspect
final walk; owner walk, homeowner walk, pre walk
handover; occupancy, certificate of occupancy
utility locate; locate request
meter set; service upgrade, panel upgrade, panel swap
water shutdown; power shutdown, cutover
startup; start-up, tune-up
site visit; site meeting, site measure, final measure, field measure
install date; install day, lead time
dump run; material run, store run
cabinet install; countertop install, tile install, window install, door install, floor install
paint prep; prep work, masking work
cleanup; clean-up, final clean, deep clean, site cleanup
demo work; excavation work, grading work
concrete pour; slab pour, footing pour, wall pour, foundation pour
trim work; finish carpentry, trim carpentry, framing work
electrical work; plumbing work, hvac work, mechanical work, tile work, masonry work, concrete work, roof work, drywall work, paint work, insulation work, siding work, deck work, fence work
brickwork; stonework, blockwork, flatwork, steelwork, tilework
floor sanding; floor refinishing
abatement; remediation, mold remediation, mitigation, water mitigation
safety meeting; toolbox talk, progress meeting, kickoff meeting
back charge; backcharge
callback; call-back, warranty call, warranty work, service call
second fix; first fix
snagging; making good
fit out; fitout
mockup; mock up`,
  },
];

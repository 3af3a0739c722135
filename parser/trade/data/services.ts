import type { Sheet } from '../sheet.ts';

/** Less usual goods of plumbing, electrical and air. Common practice, no source. */
export const SERVICES: Sheet[] = [
  {
    kind: 'material',
    counter: 'plumbing',
    lines: `toilet fill valve; @each
valve cartridge; pressure balance valve; @each
body spray; @each
p trap kit; @each
disposer flange; disposal gasket; @each
dishwasher connector; dishwasher elbow; @each
heater drain pan; @each
drip leg; sediment trap; @each
pex bracket; bend support; @each
teflon tape; ~teflon type, tough lawn tape; @roll
abs glue; @can
toilet flange repair ring; @each
waxless seal; @each
trip lever; @each
flush tower; @each
braided supply; @each
swing check; @each
shower strainer; @each
cheater vent; @each
no hub band; mission band; @each
burst proof hose; @pair
tethered float; @each
jet pump; @each
submersible pump; @each
well tank; @each
brine tank; @each
whole house filter; @each
gas line connector; @each
sweat elbow; @each
sweat coupling; @each
dielectric nipple; @each
close nipple; @each
pex clamp; @bag
copper manifold; @each
hole strap; pipe hook; @bag
hanger tape; @roll
thread compound; @can
flux brush; @each
hub pipe; @ft`,
  },
  {
    kind: 'material',
    counter: 'electrical',
    lines: `screwless plate; decora plate; @each
motion switch; @each
crimp sleeve; @pack
romex connector; button connector; @bag
emt elbow; @each
smurf tube; ent conduit; @ft
wire mold; wiremold, cord cover; @each
step light; post light, bollard light; @each
quad breaker; half size breaker; @each
safety switch; @each
goof ring; @each
service mast; mast head; @each
bonding bar; @each
slide dimmer; @each
fan timer; @each
smart dimmer; @each
pigtail cord; @each
pop up outlet; @each
insulated staple; romex staple; @box
emt strap; two hole strap; @bag
compression connector; @bag
solid wire; @spool
jet line; @roll
light transformer; @each
island light; @each
wrap light; @each
edison bulb; @each
inline fan; @each
data rack; @each
solar rail; @each`,
  },
  {
    kind: 'material',
    counter: 'hvac',
    lines: `duct wye; duct tee, wye fitting; @each
duct reducer; @each
volume damper; @each
drain pan switch; @each
mini split bracket; @each
igniter; @each
smart thermostat; @each
heat cable; floor heat mat, floor warming mat; @each
vibration isolator; vibration pad, isolation pad; @each
saddle tap; @each
duct hanger; @roll
floor grille; @each
filter grille; @each
pleated filter; @each
condensate trap; @each
ac pad; @each
mini split head; @each
cased coil; @each
electric baseboard; @each
bleeder key; @each
radiant panel; @each
dryer vent hood; @each
roof jack vent; @each
humidifier pad; @each
double wall pipe; @each
class a chimney; @each`,
  },
];

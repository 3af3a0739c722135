import type { Sheet } from '../sheet.ts';

/** Rooms and parts of the site. */
export const AREAS: Sheet[] = [
  {
    kind: 'area',
    lines: `kitchen; cocina, galley
kitchenette; butler's pantry, scullery
bathroom; bath, baño, washroom, bano
restroom; toilet room, men's room, women's room, ladies room
wet room; ensuite, en suite, shower room; ~on suite
cloakroom
hall bath; hallway bath
upstairs bath; upstairs bathroom, upstairs hall bath
downstairs bath; downstairs bathroom
basement bath
kids bath; kids bathroom, jack and jill bath
pool bath
master bath; primary bath, main bath, master bathroom, owner's bath, primary bathroom
guest bath; guest bathroom
half bath; powder room, half bathroom, powder bath; ~half bad, powdered room
bedroom; cuarto, recamara, dormitorio, habitacion
guest room; guest bedroom, spare bedroom, spare room
kids room; nursery, bunk room
master bedroom; primary bedroom, master, main bedroom, master suite, primary suite
back bedroom
front bedroom
upstairs bedroom
living room; lounge, sitting room, sala, front room, estancia
great room; family room
dining room; comedor, breakfast nook, dinette, breakfast room
laundry room; laundry, lavanderia, laundry closet
utility room
mud room; mudroom, boot room
entry; entryway, foyer, vestibule, front entry, entrada, porch entry
hall; hallway, corridor, pasillo, front hall, back hall
upstairs hall; upstairs hallway, landing area
closet; walk in closet, coat closet, hall closet, wardrobe, armario
linen closet; airing cupboard; ~lemon closet
pantry; despensa, walk in pantry
cupboard under stairs; under stairs
office; study, den, home office, oficina
library
studio; art room, music room, sewing room, craft room
basement; bsmt, cellar, sotano, lower level; ~based mint
rec room; basement rec room, game room
garage; cochera, bay two
carport
attic; loft, atico, roof space
crawlspace; crawl space, crawl; ~crawl's pace, call space
deck; back deck, front deck, side deck
terrace; roof deck area
porch; back porch, front porch, side porch, screened porch, veranda, stoop porch
sunroom; sun porch, sun room, lanai, conservatory
patio; courtyard, back patio; ~paddy oh
breezeway
back yard; backyard, back garden, patio de atras
yard; garden, lawn, jardin
front yard; front garden
side yard; side garden
driveway; drive; ~drive weigh
walkway; sidewalk, path, footpath, front walk, banqueta
roof; azotea, flat roof, main roof
back slope; front slope
exterior; outside, afuera, building exterior
north side; south side, east side, west side, street side, alley side
front of house; front elevation, facade
back of house; rear of building, rear elevation
east wall
west wall
north wall
south wall
east elevation; west elevation, north elevation, south elevation
upstairs; upper floor, top floor, arriba
second floor; third floor, fourth floor
downstairs; ground floor, main floor, first floor, abajo
stairwell; stair hall, stairway; ~stare well
mechanical room; boiler room, furnace room, mech room, plant room
electrical room; meter room, switch room
elevator lobby; elevator shaft, lift lobby
shop; workshop, taller
shed; tool shed, garden shed
barn; outbuilding, pole barn
greenhouse
guest house; adu, granny flat, in law suite, accessory unit; ~a d u
waiting area; waiting room
reception; front desk, reception area
lobby
break room; lunch room, staff room
conference room; meeting room, board room
showroom; sales floor
dressing room; fitting room, changing room, locker room
storage room; store room, storeroom, storage, bodega
classroom
server room; it closet, data closet, idf, mdf closet
copy room
exam room; treatment room, operatory, nurse station
dish pit; commercial kitchen, prep area, walk in cooler
dining area; bar area
stock room; back room, stockroom
loading dock; dock
parking lot; car park, estacionamiento
pool; pool deck, alberca
pool house; pump house, pool equipment
spa; sauna, steam room
gym; exercise room, weight room
playroom; media room
theater; theatre, home theater
wine cellar; wine room
bar; wet bar
balcony; rooftop, balcon
alley; side of the house, callejon
common area; common hall, amenity room
penthouse
warehouse floor; mezzanine
church hall; fellowship hall
trailer office; job trailer, site office
new addition; the addition
bump out
staging area; laydown area`,
  },
];

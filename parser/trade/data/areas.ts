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
staging area; laydown area
bath one; bath two, bath three, bath 1, bath 2, bath 3, bathroom one, bathroom two, bathroom 1, bathroom 2
bedroom one; bedroom two, bedroom three, bedroom four, bedroom 1, bedroom 2, bedroom 3, bedroom 4, bed one, bed two, bed three, bed 1, bed 2, bed 3, br1, br2, br3
boys room; girls room, son's room, daughter's room, baby's room, baby room, teen room
guest suite; owner's suite, main suite
box room; attic room, bonus room, flex room, flex space
living area; living space, family area
formal living; formal dining, formal living room, formal dining room
den room; snug, drawing room, reception room, hearth room, keeping room
rumpus room; rumpus, tv room, movie room, piano room, hobby room
man cave; mancave, billiard room, pool room
dressing area; sitting area, reading room
kitchen area; coffee station
laundry area; utility area
electric room; panel room, comms room, riser room, pump room, elevator room, generator room, data room, av room, telecom room
trash room; bin store, recycling room
coat room; storage area, storage unit
entrance; main entrance, front entrance, back entrance, rear entrance, side entrance
entry area; foyer area, lobby area
portico; airlock
stair one; stair two, stair a, stair b
walk in closet area; reach in, walk in robe
suite a; suite b, suite one, suite two, suite 100, suite 200, suite 101
office one; office two, office 1, office 2, office suite
cubicle; cubicles, phone booth
training room; huddle room, wellness room, mothers room
cafeteria; canteen, staff area
mail room; mailroom, print room, file room, records room
front counter; cash wrap, sales area, retail area, retail space, shopfront
receiving area; loading area
warehouse; production area
machine room; tool room, tool crib, workroom, work room, spray booth, paint booth, clean room
bay one; bay three, bay 1, bay 2, bay 3
drive thru; drive through
walkout; cold room
undercroft; under the house, vault
porte cochere; motor court, parking area, parking stall
attic space; loft space, roof void, ceiling space, ceiling void, kneewall space
screen room; three season room, four season room, florida room
outdoor area; alfresco, outdoor living, bbq area, patio area
lawn area; planting area, planting bed, garden area
paddock; pasture, orchard, tack room, hayloft, stall, chicken coop, coop, kennel
bath house; cabana, boathouse, jetty
curbside; verge, nature strip
alleyway; laneway, back lane, side passage, passageway
turnaround; cul de sac
job site; jobsite, building site
building a; building b, building one, building two, building 1, building 2
main house; front house, rear house, back house, main building, carriage house, coach house, guest cottage
unit a; unit b, unit one, unit two, unit three, unit 1, unit 2, unit 3
apartment; apartment a, apartment b, apartment one, apartment two, apt 1, apt 2
upper unit; lower unit, upstairs unit, downstairs unit, front unit, rear unit, end unit
condo; townhouse, cottage, cabin, tiny house, casita
clubhouse; community room, rec center
chapel; sanctuary, nave, narthex, altar, steeple, bell tower
gymnasium; auditorium, stage, backstage, green room
daycare; nursery area, toddler room, infant room
clinic; x ray room, sterilization room, lab room, nurses station, patient room, therapy room, massage room, pharmacy
salon; spa room, sauna room
restaurant; cafe, bakery, brewery, tap room, taproom, dish room
cooler room; freezer room, walk in box
hotel room; ballroom, banquet room
museum; gallery, exhibit area
level one; level two, level three, level 1, level 2, level 3, upper level, main level, ground level, mid level, roof level
second story; third story, top story, first storey, second storey, upper storey
whole house; entire house
north wing; south wing, east wing, west wing, new wing, old wing
extension; rear extension, side extension, annex, annexe
garden room; summer house, summerhouse, outhouse
loft conversion; garage conversion
shower area; sink area, fireplace area, niche area`,
  },
];

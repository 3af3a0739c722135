/**
 * What crews talk about besides the work, by the words that give it away: near them a bare number is seldom counted goods or
 * a measure. Words that are goods, tools or rooms as well are left out. Common practice, no source.
 */
const TOPICS: Readonly<Record<string, string>> = {
  sport:
    'game games match matches score scored scores scoring team teams league division playoffs playoff final finals semis semifinal championship trophy cup season ' +
    'coach referee ref umpire player players quarterback pitcher striker goalie goal goals touchdown homer inning innings batting bat bats hitter hits strikeout ' +
    'punted punt tackle rebound rebounds dunk bowled bowling golf golfing par birdie birdied bogey bogeyed handicap tee putt fairway hockey football ' +
    'footy soccer baseball basketball rugby cricket tennis softball volleyball wrestling boxing marathon race raced racing ran runner lap laps medal ' +
    'gym bench benches deadlift squat reps jersey fans fan stadium arena rink ballpark tournament knicks lakers bears lions eagles vikings packers patriots pats ' +
    'chelsea arsenal spurs united city rangers celtic swans bulldogs mets yankees cubs sox dodgers giants jets bills chiefs cowboys steelers raiders hawks bulls ' +
    'celtics warriors heat suns kings bruins leafs penguins oilers canucks won win wins lost lose losing beat tied drew thrashed undefeated odds bet bets betting',
  body:
    'weigh weighs weighed weight doctor doc nurse hospital clinic surgery surgeon stitches fever flu covid cold sick cough pill pills aspirin advil ' +
    'ibuprofen tylenol medicine prescription shot shots vaccine blood sugar cholesterol pulse heart knee knees shoulder hip thumb finger fingers toe ' +
    'toes rib ribs teeth tooth dentist glasses diet calories asleep slept sleep nap tired hungover steps pregnant birth born baby babies dead died funeral ' +
    'age aged birthday older younger retire retired retiring retirement pension',
  food:
    'breakfast lunch dinner supper snack coffee coffees tea beer beers wine whiskey whisky vodka tequila bourbon drink drinks drank donut donuts doughnut ' +
    'doughnuts pizza pizzas burger burgers taco tacos burrito burritos sandwich sandwiches hotdog hotdogs wings fries eggs bacon sausage toast pancakes ' +
    'cake pie pies cookies candy chips soda coke pepsi gatorade sugars milk cream steak chicken barbecue bbq sushi noodles soup salad ate eat eating ' +
    'hungry restaurant diner cafe pub menu takeout smoke smokes cigarette cigarettes cigar vape',
  money:
    'money cash dollars bucks price prices priced pricing cost costs costing costly pay pays paid paying paycheck payday wage wages salary rate rates hourly overtime bonus raise ' +
    'tip tips bill bills invoice invoices quote quoted quotes estimate estimates bid bids bidding tender budget budgeted contract deposit retainage retention allowance ' +
    'markup margin profit loss tax taxes taxed vat gst refund discount sale cheap cheaper expensive owe owes owed lend lent loan loans mortgage rent lease insurance ' +
    'deductible premium premiums coverage liability bond bonded bank banks account credit debit card visa venmo paypal crypto stock stocks shares market ' +
    'dow interest fee fees fine fined ticket tickets toll tolls fuel petrol diesel sold sell selling bought bargain haggle knocked worth grand fortune ' +
    'lottery powerball jackpot lotto scratch raffle poker blackjack cards dice casino',
  kin:
    'wife husband missus girlfriend boyfriend fiancee fiance mom mum mother dad father son sons daughter daughters kid kids boy boys girl girls brother brothers sister ' +
    'sisters uncle uncles aunt aunts cousin cousins nephew niece grandma grandpa gran nan granddad grandfather grandmother grandson grandkids family families inlaws married marriage ' +
    'divorced wedding anniversary twins toddler teenager teenagers newborn dog dogs cat cats puppy puppies pups neighbor neighbour neighbors neighbours friend friends mate mates ' +
    'buddy guy guys fella fellas lads bloke blokes dude dudes',
  school:
    'school schools class classes grade grades exam exams quiz homework college university campus degree diploma semester teacher teachers professor student ' +
    'students apprentice apprentices apprenticeship journeyman license licence licensed licensing certificate certified certification osha gpa graduated graduate graduation ' +
    'kindergarten preschool passed failed passing failing',
  media:
    'movie movies film films show shows tv television channel channels radio station stations episode episodes season netflix youtube podcast song songs album band bands concert ' +
    ' singer music novel book books chapter chapters verse psalm hymn bible scripture gospel sermon church magazine newspaper headline news weatherman actor actors ' +
    'theater theatre cinema playlist rock rap rapper sequel trilogy',
  phones:
    'phone phones cell mobile text texts texted texting call calls called caller voicemail email emails inbox website online internet wifi router modem password passcode login ' +
    'username app apps ipad iphone android laptop computer software update updates version printer scanner siri alexa google bluetooth gps tracking download upload ' +
    'gig gigs megs gigabyte charger facebook instagram tiktok',
  papers:
    'code codes section sections paragraph clause article chapter figure fig form forms permit permits docket file filed application policy claim claims ' +
    'serial model models series sku barcode catalog catalogue edition rev revision revised addendum alternate alternates proposal submittal submittals rfi asi ' +
    'bulletin spec specs specification drawing drawings detail details sketch elevation elevations page pages schedule option options plan plans milestone lookahead report ' +
    'zoning parcel deed survey ordinance statute irc ibc nec upc ipc nfpa astm ansi iso standard grid gridline ',
  roads:
    'highway freeway interstate expressway turnpike parkway motorway route road roads street avenue boulevard exit ramp junction roundabout intersection corner block blocks ' +
    'bridge tunnel traffic jam jammed gridlock detour mile miles mph speeding speed limit drive driving drove drives commute bus train tram subway metro ferry flight flights plane ' +
    'airport terminal platform cab taxi uber parking parked park north south east west northbound southbound eastbound westbound county state mailbox address lives ' +
    'live lived neighborhood zip downtown uptown hotel motel apartment apartments condo suite',
  cars:
    'truck trucks pickup car cars van vans jeep chevy ford dodge ram gmc toyota honda nissan mazda subaru hyundai kia tesla bmw audi mercedes volvo silverado sierra tacoma tundra ' +
    'ranger hilux ute lorry sedan coupe suv motorcycle harley bike engine cylinder horsepower transmission mileage odometer mpg tires tyres plates plate rego registration ' +
    'excavator backhoe skidsteer bobcat kubota deere caterpillar forklift lull telehandler crane jlg genie',
  clock:
    'morning afternoon evening night tonight noon midnight midday dawn dusk oclock early late later shift shifts schedule scheduled appointment meeting meetings start starts started starting ' +
    'finish finishes open opens opened close closes closed closing until till before after arrive arrives arrived arriving leave leaves clocked sunrise sunset break breaks smoko ' +
    'monday tuesday wednesday thursday friday saturday sunday weekend weekday week weeks month months january february march april june july august september october november december',
  past:
    ' decade decades century war army navy marines military vietnam regiment battalion squad platoon tour tours veteran president election elected hurricane tornado earthquake ' +
    'magnitude category flood storm blizzard founded established history historic vintage antique era remembered remember grandfathered',
  services:
    'police cops cop sheriff officer ambulance dispatch dispatched court judge jury lawyer attorney lawsuit union local hall ' +
    'inspector inspectors agency department counter desk hotline extension ext press dial',
};

/** Topics of each word. */
const OF_WORD: ReadonlyMap<string, readonly string[]> = (() => {
  const out = new Map<string, string[]>();
  for (const [topic, words] of Object.entries(TOPICS))
    for (const word of words.split(' ')) out.set(word, [...(out.get(word) ?? []), topic]);
  return out;
})();

const NONE: readonly string[] = [];

/** What a word is talk of, if of anything but the work; its possessive stripped. */
export const topicsOf = (word: string): readonly string[] =>
  OF_WORD.get(word) ?? OF_WORD.get(word.replace(/'(?:s|ll|d|re|ve)$/, '')) ?? NONE;

/** Words said otherwise than they are spelled, of those that phones write for the trade's: common practice, no source. */
export const ODD: Readonly<Record<string, string>> = Object.fromEntries(
  (
    'are:ar you:yU why:wY see:sI sea:sI one:wun two:tU do:dU to:tU who:hU of:uv eye:Y i:Y the:0u was:wos were:w3 they:0A their:0Er there:0Er ' +
    'where:wEr said:sed your:yor some:sum come:kum done:dun none:nun son:sun love:luv glove:gluv move:mUv shoe:SU shoes:SUs ' +
    'door:dor floor:flor poor:por four:for pour:por court:kort bear:bEr wear:wEr pear:pEr heart:hart head:hed read:red bread:bred ' +
    'thread:0red threads:0reds tread:tred treads:treds lead:led weather:we03 leather:le03 feather:fe03 sweat:swet steady:stedI ' +
    'wood:wud would:wud could:kud should:Sud good:gud foot:fut book:buk look:luk took:tuk hook:huk cook:kuk hood:hud stood:stud ' +
    'flood:flud blood:blud tough:tuf rough:ruf enough:inuf trough:trof cough:kof dough:dO though:0O through:0rU bough:bW ' +
    'thorough:03O people:pIpul iron:Y3n choir:kwY3 colonel:k3nul build:bild built:bilt guide:gYd guard:gard guards:gards guess:ges ' +
    'conduit:konduit receipt:risIt salmon:samun half:haf calf:kaf could:kud island:Ylund isle:Yl aisle:Yl sword:sord answer:ans3 ' +
    'muscle:musul castle:kasul listen:lisun whistle:wisul bowl:bOl own:On grown:grOn blown:blOn thrown:0rOn low:lO snow:snO show:SO ' +
    'flow:flO blow:blO grow:grO row:rO tow:tO know:nO known:nOn mow:mO how:hW now:nW cow:kW bow:bO saw:so law:lo raw:ro draw:dro ' +
    'great:grAt steak:stAk break:brAk group:grUp soup:sUp youth:yU0 touch:tuC young:yuN country:kuntrI double:dubul trouble:trubul ' +
    'course:kors source:sors shoulder:SOld3 soul:sOl mould:mOld molding:mOldiN moulding:mOldiN leveller:levul3 levelling:levuliN leveling:levuliN mold:mOld cold:kOld old:Old gold:gOld hold:hOld bold:bOld told:tOld ' +
    'bolt:bOlt bolts:bOlts roll:rOl poll:pOl toll:tOl post:pOst most:mOst host:hOst ghost:gOst both:bO0 wild:wYld child:CYld mind:mYnd find:fYnd ' +
    'kind:kYnd blind:blYnd behind:bihYnd sign:sYn pint:pYnt both:bO0 gross:grOs only:OnlI ' +
    'any:enI many:menI again:ugen says:ses friend:frend busy:bisI business:bisnis women:wimun sugar:Sug3 sure:Sor ' +
    'coupling:kupliN couple:kupul get:get gets:gets give:giv given:givun girl:g3l gift:gift gear:gIr geese:gIs get:get together:tuge03 tiger:tYg3 ' +
    'machine:muSIn police:pulIs pizza:pItsu cafe:kafA ballet:balA bouquet:bOkA depot:dIpO debris:dubrI rendezvous:rondAvU ' +
    'pvc:pIvIsI stud:stud wye:wY tee:tI tea:tI ell:el pex:peks lav:lav mdf:emdIef soldering:sod3iN solder:sod3 solders:sod3s ' +
    'schluter:Slut3 escutcheon:eskuCun sheathing:SI0iN wainscot:wAnskot wainscoting:wAnskotiN mosaic:mOsAik fascia:fASu soffit:sofit ' +
    'masonry:mAsunrI mason:mAsun basin:bAsun lever:lev3 level:levul leveler:levul3 ceiling:sIliN ceilings:sIliNs ' +
    'gauge:gAJ choice:CQs acid:asid valve:valv valves:valvs edge:eJ hinge:hinJ hinges:hinJis flange:flanJ flanges:flanJis ' +
    'leisure:lIJ3 caulk:kok caulking:kokiN chalk:Cok walk:wok talk:tok faucet:fosit faucets:fosits latex:lAteks vapor:vAp3 major:mAJ3 ' +
    'cement:siment sawzall:sosol poly:polI polyurethane:polIyUr0An vanity:vanitI cavity:kavitI wire:wY3 wires:wY3s wiring:wYriN tire:tY3 ' +
    'fire:fY3 hire:hY3 dryer:drY3 drier:drY3 buyer:bY3 higher:hY3 liar:lY3 lion:lYun lions:lYuns line:lYn height:hYt weight:wAt'
  )
    .split(' ')
    .map((row) => row.split(':') as [string, string]),
);

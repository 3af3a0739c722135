/** Written by `tests/learn/goods.ts`: none, need, have, used, bought, returned, each weight after a comma, then what was seen. */
export const FATE = `
.13,,,,,	after #
,.15,,,,	after &
.22,,,,,	after above
.21,,,,,	after actually
-.11,,,.18,,	after add
.13,,,,,	after along
,,.11,,,	after arrive
.11,,,,,	after backwards
-.15,,,.26,,	after bad
,.14,,,,	after bag
,,.17,,,	after basement
-.1,,.1,,,	after bench
.11,,,,,	after bought far comma
,,,,,.2	after bought far past
,,,,.29,	after bought here
,-.11,,,.26,	after bought here past
-.11,,,,.24,	after bought sentence
-.14,,,,.13,	after bought sentence and
-.12,-.2,,-.13,.29,	after bought sentence comma
-.14,-.22,,-.17,.3,	after bought sentence none
-.25,,,,.15,	after bought sentence past
.11,,,,,	after bought sentence run-on
.1,,,,,	after bow
.2,,,,,	after break
.26,,,,,	after buzz
.21,,,,,	after chatter
,,.15,,,	after clean
.2,,,,,	after corridor
,-.26,.16,,,	after counter
.26,,,,,	after crook
.2,,,,,	after crush
.13,,,,,	after deck
.2,,,,,	after den
,,,,.18,	after didn't
.12,,,,,	after dining room
,.11,,,,	after doesn't
.14,,,,,	after drain
,,,.12,,	after drill
.18,,,,,	after drop
.15,,,,,	after drum
,,,.13,,	after each
.15,,,,,	after edge
.12,,,,,	after ends
-.23,,.18,,,	after extra
-.18,.22,,,,	after factory
,,,.16,,	after fireplace
,,,.14,,	after fit
.22,,,,,	after flat
.12,,,,,	after floor
.11,,,,,	after frame
,,,.14,,	after frost
.23,-.15,,,,	after grout
.22,,,,,	after guy
.1,,,,,	after half
.16,,,,,	after hallway
.22,,,,,	after have here past
.15,,,,,	after have here run-on
,.11,,,,	after have sentence and
-.15,,,,,	after have sentence comma
,.27,,,,	after have sentence imperative
-.22,.42,,,,	after have sentence modal
-.15,,.39,-.26,,	after have sentence none
,.24,,,,	after have sentence owed
.29,,-.16,,,	after have sentence past
,.21,,,,	after have sentence word
,,.22,,,	after here
.22,,,-.16,,	after hole
.21,,,,,	after hollow
-.37,.26,.15,,,	after home
-.1,,,.19,,	after hot
,.11,,,,	after inspector
,,,.19,,	after into
,.16,,,,	after island
-.18,.14,,,,	after job
,,,,.14,	after joint
.16,,,,,	after lane
.21,,,,,	after laundry
,-.12,.17,,,	after leaning
.19,,,,,	after mark
.25,,,,,	after mask
.23,,-.15,,,	after mind
-.12,.24,,,,	after mine
.14,,,,,	after miter
,,,.1,,	after mount
,,.11,,,	after my
.15,,,,,	after need far and
.13,,,,,	after need far modal
.16,,,,,	after need far word
,.1,,,,	after need here comma
,.2,,,,	after need here none
,.13,,,,	after need here owed
,.15,,,,	after need here past
,.29,,,,	after need here stop
,.18,,,,	after need sentence and
,.35,,,,	after need sentence comma
-.14,.83,,,,	after need sentence none
.25,,,,,	after need sentence owed
-.17,,.14,,,	after need sentence past
,.13,,,,	after need sentence present
.34,,,,,	after need sentence word
.16,,,,,	after none far and
,.15,,,,	after none far owed
-.13,.12,,,,	after none here modal
.11,,,,,	after none here present
,-.12,,,.18,	after none sentence stop
.12,,,,,	after north
,.13,,,,	after notch
.16,,,,,	after number
-.3,.21,,,,	after ones
-.12,,,,.19,	after order
.11,,,,,	after past
,,,.13,,	after pitch
.15,,,,,	after plate
,.25,,-.18,,	after please
,,.16,,,	after plus
-.11,,.27,,,	after real
-.19,,,.24,,	after replace
.16,,,,,	after require
.15,,,,,	after returned here
.15,,,,,	after returned here copula
.1,,,,,	after returned here past
,.14,,,,	after returned sentence and
-.14,,,,,	after rough opening's
.11,,,,,	after scratch
.14,,,,,	after see
-.21,-.19,.26,,,	after shed
,.12,,,,	after shim
-.23,,,,,	after shop
-.13,,.24,,,	after site
.11,,,,,	after size
-.22,.35,,,,	after snap
,,,.21,,	after stack
-.21,,,,,	after stain
-.17,,.16,,,	after stop
,,,,.21,	after store
.14,,,,,	after street
.17,,,,,	after strike
,,,.11,,	after supply
-.24,,,.3,,	after tell
.11,,,,,	after template
.17,,,,,	after test
.14,,,,,	after than
.12,,,,,	after the kids
,,.14,,,	after their
.14,,,,,	after they're
.25,,,,,	after thing
.31,-.24,,,,	after too high
.2,,,,,	after too short
-.29,-.36,.34,,,	after trailer
,.16,,,,	after trim
,,.1,,,	after truck
.15,,,,,	after until
,,,.23,,	after use
,.15,,,,	after used far imperative
.1,,,,,	after used far modal
,.15,,,,	after used far owed
,,,,,.15	after used here and
-.1,,,.27,,	after used here copula
,-.15,,,,	after used here none
,,,.13,,	after used here stop
,.13,,,,	after used sentence word
,,,,.12,	after vent
.14,,,,,	after wait
.11,,,,,	after wet
-.11,,,,,	after white
-.14,,,,,	after width
,,,.14,,	after wire
-.12,,.2,,,	again bought
.16,-.22,,,,	again need
,,.38,,,	again used
-.27,.31,,,,	ahead &
-.16,,,,,	ahead (
-.11,,,,,	ahead +
.17,,,,,	ahead @
,.22,,,,	ahead across
-.17,,,.24,,	ahead again
.13,,,,,	ahead air
,,,.12,,	ahead are
-.19,.16,,,,	ahead arrive
.12,,,,,	ahead as
-.18,.25,,,,	ahead backsplash
.13,,,,,	ahead bay
.21,,,,,	ahead between
.13,,,,,	ahead black
,.19,,,,	ahead bond
.22,,,,,	ahead both
.16,,,,,	ahead bottom
,.11,,,,	ahead bring
,,,.2,,	ahead burn
,,,,.1,	ahead buy
-.11,,,.23,,	ahead cap
,,,.16,,	ahead change
.15,,,,,	ahead code
,.15,,-.14,,	ahead could
,-.13,,,.14,	ahead crown
.13,,,,,	ahead dead
.12,,,,,	ahead deep
-.13,.25,,,,	ahead den
.17,,,,,	ahead dig
.14,,,,,	ahead ding
.15,,,,,	ahead drain
.11,,,,,	ahead drill
.11,,,,,	ahead drip
,.21,,,,	ahead dry
.23,,,,,	ahead each
,-.11,,.34,,	ahead eat
.15,,,,,	ahead empty
,,.25,,,	ahead enough
,,,.13,,	ahead even
-.11,,,.21,,	ahead everything
,-.12,,,,	ahead extra
,.13,,,,	ahead falta
,.16,,,,	ahead figure
.13,,,,,	ahead flash
-.22,.32,,,,	ahead flat
,,,.11,,	ahead float
.11,,,,,	ahead floor
,,,.1,,	ahead foam
.11,,,,,	ahead footings
-.11,.18,,,,	ahead forget
,,.18,,,	ahead fre
,,,.16,,	ahead front
.16,,,,,	ahead front room
.14,,,,,	ahead full
.11,,,,,	ahead good
-.11,.21,,,,	ahead guess
.12,,,,,	ahead half
.19,,,,,	ahead hand
.13,,,,,	ahead height
,,.17,,,	ahead him
,,,.19,,	ahead job
.12,,,,,	ahead land
.12,,,,,	ahead living room
-.19,,.16,,,	ahead maybe
,.13,,,,	ahead need
,.11,,,,	ahead new
.12,,,,,	ahead niche
.17,,,,,	ahead old
.16,,,,,	ahead one's
,,.12,,,	ahead only
.14,,,,,	ahead opened up
,.24,,,,	ahead order
,,.17,,,	ahead other
.15,,,,,	ahead out of plumb
.11,,,,,	ahead peel
,,.15,-.1,,	ahead pile
,,,.16,,	ahead pipe
,,.14,,,	ahead plus
.23,,,,,	ahead quick
.11,,,,,	ahead read
-.18,,.19,,,	ahead rest
-.13,,,,,.31	ahead return
.15,,,,,	ahead roll
,.13,,-.18,,	ahead rotten
.11,,,,,	ahead run's
-.16,,,.15,,	ahead screw
,,,.2,,	ahead seal
,,,,,.1	ahead send
,,,.14,,	ahead shed
.17,,,,,	ahead shim
,.32,,,,	ahead short
-.42,.38,-.14,,,	ahead shy
-.18,,.16,,,	ahead sign
,,,.11,,	ahead skirt
.1,,,,,	ahead slope
.17,,,,,	ahead snake
.23,,,,,	ahead snap
,,,.16,,	ahead solid
.26,,,,,	ahead sound
.25,,,,,	ahead splash
,-.13,,.22,,	ahead stack
-.17,,,.27,,	ahead stairs
-.1,,,,,	ahead supplier
.12,,,,,	ahead tall
.2,,,,,	ahead tap
.12,,,,,	ahead tell
.12,,,,,	ahead temp
,,.11,,,	ahead the lady
,,,,.11,	ahead them
.19,,,,,	ahead then
,-.11,,,,	ahead thick
.18,,,,,	ahead thing
,,,.2,,	ahead through
,,.16,,,	ahead try
,,,.1,,	ahead turn
.11,,,,,	ahead underneath
,,,.2,,	ahead use
.11,,,,,	ahead wall's
,,,.12,,	ahead way
.17,,,,,	ahead were
.17,,,,,	ahead wide
-.1,.31,,,,	ahead will
.21,,,,,	ahead wire
-.22,.14,.13,,,	ahead without
.11,,,,,	ahead would
,,.1,,,	ahead wrap
,.15,,,,	ahead x
2.31,-.83,-1.6,-.93,-2.79,-3.17	any
,,,.26,,	area beside nothing
.12,,,,,	area flawed
-.28,,,.42,,	area left #
.19,,,-.21,,	area left about
-.14,,,.22,,	area null none no
-.3,.11,,.22,,	area right #
-.14,,,.22,,	area says none no
,,,.13,,	area sold so false
-.14,,,.22,,	area verb null no
.17,,,,,	bare after bought sentence
.12,,,,,	bare beside box
,.14,,,,	bare beside break
,,,.16,,	bare beside cap
.15,,,,,	bare beside hang
.11,,,,,	bare beside have b nobody
.13,,,,,	bare beside have b person
.13,,,,,	bare beside lay
,,.15,,,	bare beside need b other
.15,,,,,	bare beside need s other
.13,,,,,	bare beside other pp person
.17,,,,,	bare beside say b person
,,,.2,,	bare beside seal
.15,,,,,	bare beside send
.18,,,,,	bare beside set
.11,,,,,	bare beside tape
.18,,,,,	bare beside throw
.17,,,,,	bare beside use
.2,,,,,	bare beside work bpp nobody
.28,,,,,	bare buy past behind
.14,,,,,	bare left Q
-.28,.21,,,,	bare left change
,,,.1,,	bare left every
.11,,,,,	bare left hang
,.14,,,,	bare left me
.13,,,,,	bare left miss
.11,,,,,	bare left need
.14,,,,,	bare left only
.12,,,,,	bare left swap
.1,,,,,	bare left the
,.12,,,,	bare list need
.1,,,,,	bare move past behind
.1,,,,,	bare named here role
.2,,,,,	bare nameless
.11,,,,,	bare need past before
.18,,,,,	bare need present behind
.14,,,,,	bare other modal before
.23,,,,,	bare right /
.14,,,,,	bare right @
.1,,,,,	bare right cut
.25,,,,,	bare right glue
,,-.14,,,	bare right leave
.22,,,,,	bare right short
.16,,,,,	bare right were
.13,,,,,	bare say past before
,,,,.25,	bare then buy b
.13,,,,,	bare then need pp
.14,,,,,	bare use past behind
-.13,,,,,	bare verb crack before
.1,,,,,	bare verb dump before
.18,,,,,	bare verb glue before
.23,-.11,,,,	bare verb grab behind
.13,,,,,	bare verb hang behind
.2,,,,,	bare verb lay behind
.11,,,,,	bare verb need before
,.12,,,,	bare verb order behind
.11,,,,,	bare verb pick behind
.13,,,,,	bare verb send behind
-.18,,,.24,,	bare verb sister behind
.17,,,,,	bare verb use behind
,,,.15,,	beside are on
-.19,.16,,,,	beside arrive
.18,,,,,	beside be Q
-.29,.16,.19,,,	beside be a
.13,,,,,	beside be p other
.14,,,,,	beside blow
,.18,,,,	beside break p other
,.11,,,,	beside bring
,.18,,,,	beside bring Q
,.15,,,,	beside bring a
,.11,,,,	beside bring b nobody
,.13,,,,	beside bring b person
-.19,.3,,,,	beside bring me
,-.21,,,,	beside bring the
-.18,,,.31,,	beside burn
-.25,,,.31,,	beside burn pp person
-.14,,,.25,,	beside burn through
-.11,,,,.13,	beside buy
-.17,.2,,,,	beside buy Q
-.35,,,-.12,.22,.17	beside buy a
,.42,,,,	beside buy b nobody
.11,,,,,	beside buy b other
-.3,-.29,,-.13,.49,	beside buy pp nobody
,-.21,,,.45,	beside buy pp person
.18,,,,,	beside call
.1,,,,,	beside call it
-.23,,,.3,,	beside cap
-.12,,,.22,,	beside change
-.22,,,.16,,	beside change b person
-.14,,,.22,,	beside change the
.13,,,,,	beside come bp other
,-.14,,,.21,	beside come s other
.16,,,,,	beside come up
.11,,,,,	beside cut bpp person
.18,,,,,	beside dig
.1,,,,,	beside ding
.1,,,,,	beside ding pp person
.1,,,,,	beside ding the
.12,,,,,	beside do p other
.12,,,,,	beside drill
.14,,,,,	beside drill Q
.11,,,,,	beside drip
.13,,,,,	beside drop
,-.13,,.36,,	beside eat
-.33,-.19,,.44,,	beside eat Q
-.36,-.19,,.47,,	beside eat p other
.1,,,,,	beside feel b person
,.16,,,,	beside figure
,.23,,,,	beside figure Q
-.13,.24,,,,	beside figure b nobody
.19,,,,,	beside fill the
.15,,,,,	beside find a
-.11,.18,,,,	beside forget
-.13,,.28,,,	beside get Q
,.33,,,,	beside get b nobody
.13,,,,,	beside get i person
-.16,,.19,,,	beside get maybe
,.21,,,,	beside get me
,-.11,.33,,,	beside get p nobody
,,.28,,,	beside get p person
.2,,,,,	beside give
,,,.11,,	beside go Q
.18,,,,,	beside go b other
,,,.23,,	beside go p person
,,,.43,,	beside go through
-.18,.31,,,,	beside grab a
-.29,,,.36,,	beside hang Q
,.14,,,,	beside hang b other
,,,.13,,	beside hang i other
-.25,,,.33,,	beside hang pp person
,,.1,,,	beside has a
,,.25,,,	beside has has person
,,.37,,,	beside have Q
,,.33,,,	beside have b nobody
,,.46,,,	beside have b person
.1,,,,,	beside have pp other
.12,,,,,	beside hit a
-.11,,.15,,,	beside is a
,,,.15,,	beside lay
,,,.14,,	beside lay pp person
.14,,,,,	beside leave G
-.31,-.12,.4,-.16,,	beside leave Q
.26,,,,,	beside like a
,.12,,,,	beside make b nobody
.13,,,,,	beside measure bp other
.13,,,,,	beside measure i other
,.21,,,,	beside miss Q
.12,,,,,	beside miss the
.19,,,,,	beside move b other
,,,.23,,	beside move p person
,.16,,,,	beside need
,.11,,,,	beside need Q
-.12,.27,,,,	beside need a
-.21,.23,,,,	beside need an
,.34,,,,	beside need b nobody
,.13,,,,	beside need b other
,.19,,,,	beside need b person
,.14,,,,	beside need more
,-.24,.2,,,	beside need the
,.21,,,,	beside order
,-.23,,,.18,	beside order G
-.23,.31,,,,	beside order N
-.38,.43,,,,	beside order Q
-.21,.32,,,,	beside order b nobody
,,,,.22,	beside order pp person
,.28,,,,	beside other b nobody
.1,,,,,	beside other i person
,,.17,,,	beside other p nobody
,,.15,,,	beside other p person
-.31,,,-.12,.33,.12	beside other pp nobody
,.12,,,,	beside other s person
-.15,.12,,,.14,	beside owe
,,,,.17,	beside owe b person
,,,.1,,	beside pack pp person
,.11,,,,	beside pick
,.18,,,,	beside pick b nobody
-.18,-.17,,,.34,	beside pick pp nobody
-.11,,,,.2,	beside pick up
.13,,,,,	beside pop
,,,.1,,	beside pour
,,,.11,,	beside put
-.31,.23,,,,	beside put G
,,,.16,,	beside put Q
-.23,,,.27,,	beside put bpp nobody
,,,.29,,	beside put in
.11,,,,,	beside read
.11,,,,,	beside read Q
-.13,,,.2,,	beside replace pp nobody
-.13,,,.2,,	beside replace the
-.2,,,,,.34	beside return
,,,.33,,	beside run Q
,.12,,,,	beside run bp nobody
,-.12,,.31,,	beside run p nobody
.12,,,,,	beside say pp person
,,,.2,,	beside seal
-.15,,,,,.13	beside send
,-.11,,.22,,	beside set Q
,,,.1,,	beside set bpp person
.16,,,,,	beside shim
.1,,,,,	beside sister Q
,,,.15,,	beside sister pp person
,,,.2,,	beside swap
,,,.13,,	beside swap the
-.33,,,.29,,	beside take Q
,,,.11,,	beside take b person
,-.1,,.17,,	beside take me
,,,-.24,,.3	beside take p nobody
,,,.37,,	beside take p other
.14,,,,,	beside take p person
,,.15,,,	beside think
,.12,,,,	beside throw b nobody
,,.16,,,	beside try
,,.25,,,	beside undefined has person
,,,.12,,	beside undefined will other
,,,.25,,	beside use
,,,.24,,	beside use Q
-.25,,,.28,,	beside use a
,,,.11,,	beside use about
-.23,.17,,,,	beside use b person
,,,.26,,	beside use pp nobody
,,,.3,,	beside use pp person
,.14,,,,	beside want Q
.3,-.23,,,,	beside want b nobody
-.11,.44,,,,	beside want b person
,.12,,,,	beside work bp nobody
,,,.12,,	beside work bpp nobody
,,,.3,,	beside work p nobody
,,,.14,,	beside work pp nobody
.17,,,,,	beside work s person
,,.1,,,	beside wrap
,,.12,,,	bound about
.12,,,,,	bound atMost
.21,,,,,	bound over
-.4,,,.34,,	code
,,,,,.2	count after bought far
-.39,-.2,,,.31,	count after bought sentence
-.17,,.33,,,	count after have here
-.15,.28,,,,	count after have sentence
,.32,,,,	count after need here
-.26,.46,,,,	count after need sentence
-.21,.12,,,,	count after used far
,-.11,,,,	count after used here
-.18,,,,,	count after used sentence
-.16,,,.3,,	count beside are
-.12,,,,,	count beside buy
,.17,,,,	count beside buy b nobody
.22,,,,,	count beside call
-.21,-.15,,.32,,	count beside change
,,,.15,,	count beside come
,,,.13,,	count beside cut
-.12,,,,,	count beside get
-.51,,,.43,,	count beside hang
,,-.13,,,	count beside has
-.14,,.37,,,	count beside have
-.39,,.43,,,	count beside have b nobody
.15,,,,,	count beside have b other
-.26,,.38,,,	count beside have b person
-.28,,,.16,,	count beside have pp person
.22,,,,,	count beside measure bp other
-.25,,,.31,,	count beside measure p other
,.14,,,,	count beside miss
,.26,,,,	count beside need
,.26,,,,	count beside need b nobody
-.19,.4,,,,	count beside need b person
-.39,.22,,,.19,	count beside order
-.27,.51,,,,	count beside other b nobody
,.18,,,,	count beside other b person
-.1,-.14,,-.18,,	count beside other p nobody
,-.12,.15,,,	count beside other p person
-.2,.32,,,,	count beside pick
.22,,,,,	count beside pull
-.13,-.1,,.29,,	count beside put
.15,,,,,	count beside read
,,,.21,,	count beside run
.2,,,,,	count beside say pp person
-.42,.12,,,,.21	count beside send
.1,,,,,	count beside sister
-.28,,,.19,,.19	count beside take
,,-.13,,,	count beside undefined has other
,,,.19,,	count beside use pp nobody
,,,.2,,	count beside use pp person
,.13,,,,	count beside work b nobody
-.12,,,,,	count beside work b person
-.16,-.13,,.3,,	count beside work bpp nobody
,,,.13,,	count beside work bpp other
,,,.21,,	count beside work p nobody
,,,.31,,	count beside work pp nobody
,.17,,,,	count buy imperative behind
,,,,.27,	count buy past behind
-.2,,,,,.27	count cue back
-.17,-.13,,,.24,	count cue bought
-.25,,.61,,,	count cue have
,.44,,,,	count cue need
-.22,,,.28,,	count cue used
.15,,,,,	count flawed
.27,,,,,	count have present before
,,.3,,,	count have present behind
-.31,,.44,,,	count kept
-.25,,,,,	count left #
-.27,,,.13,,	count left +
.31,,,,,	count left G
-.1,,.13,,,	count left Q
.18,,,,,	count left T
,,,.28,,	count left all
-.33,,,,,	count left and
.31,,,,,	count left at
.15,,,,,	count left be
-.16,,.12,,,	count left get
,,,.11,,	count left go
,,.19,,,	count left have
,,,.25,,	count left in
.12,,,,,	count left is
,.22,,,,	count left me
,.18,,,,	count left miss
,.29,,,,	count left need
.21,,,,,	count left of
-.13,-.12,.29,,,	count left only
.27,,,,,	count left pull
,-.1,,,,	count left put
.15,,,,,	count left read
,,,.1,,	count left run
-.38,.43,,,,	count left short
,,.26,,,	count left the
,,.36,,,	count left there's
,,,.1,,	count left through
-.11,,.37,,,	count left to
-.27,.14,,,,	count left up
-.43,,,.26,,	count left use
-.35,.42,,-.15,,	count list need
-.13,-.12,,.1,,	count measure owed behind
.14,,,,,	count measure past behind
-.11,.11,,,,	count more
,,.37,,,	count move past before
,,,-.2,,	count move past behind
-.19,,,,,	count name flawed
.21,,,,,	count named before area
,,,.14,,	count named before fixture
.14,,,,,	count named before surface
.51,,,,,	count named here defect
-.48,,,,,	count named here material
-.89,,,,,	count named here part
.27,,,,,	count named here surface
-.23,.23,,,,	count named here tool
-.33,,,,,	count named here word
-.32,.19,,,,	count need modal behind
,.16,,,,	count need owed behind
,.27,,,,	count not ahead
-.16,.13,,,,	count null modal behind
-.26,.55,,,,	count other imperative behind
,.11,,,,	count other owed behind
.21,,,,,	count other past before
,.14,,,,	count other present behind
-.42,,,.29,,	count pointing
-.16,,,.12,,	count right +
,.1,,,,	count right Q
.12,-.15,,,,	count right T
,-.11,.12,,,	count right already
-.11,,,,,	count right and
.24,,,,,	count right at
-.4,.33,.1,-.16,,	count right by
-.17,,,.29,,	count right in
-.33,,.53,,,	count right leave
,.13,,,,	count right more
-.22,.41,,,,	count right short
,,.18,-.18,,	count right strip
,,,-.13,,	count right the
,.13,,,,	count right up
-.17,,,,,.24	count right were
.2,,,,,	count say past behind
,,.18,,,	count say present behind
-.13,.37,,,,	count says imperative behind
-.14,.27,,,,	count says imperative behind not
-.2,.36,,,,	count says modal behind
,.19,,-.16,,	count says owed before
,,,.23,,	count says past before
-.31,.3,,,,	count sized
,.13,,,,	count sold so false
-.15,,,,,	count sold so true
,,,,,.16	count then measure p
-.34,,.55,,,	count then move pp
.35,,,,,	count then other i
.37,,,,,	count then other p
,,,,,.13	count then other pp
,.16,,,,	count then other s
.2,,,,,	count then undefined has
,.2,,,,	count then undefined will
-.15,,.22,,,	count then work b
,,,.34,,	count then work pp
,,,.17,,	count use past behind
-.16,.19,,,,	count verb bring behind
,,,.11,,	count verb call behind
-.18,,,,,	count verb get behind
.31,,,,,	count verb go behind
.27,,,,,	count verb have before
,,.3,,,	count verb have behind
-.19,,.41,,,	count verb leave before
,.32,,,,	count verb need behind
-.39,.22,,,.19,	count verb order behind
-.36,.42,,,,	count verb pick behind
.27,,,,,	count verb pull behind
,-.11,,.2,,	count verb put behind
-.18,,,.21,,	count verb run behind
.1,,,,,	count verb sister behind
-.18,,,,,.2	count verb take behind
-.28,,,.19,,	count whole clause
.27,-.11,,,,	count work owed behind
,,,.34,,	count work past before
,,,.35,,	count work past behind
,,,.22,,	count work present behind
,,,,.47,	cue bought
-.27,.27,,,,	first N
-.25,.16,,,,	first an
,.1,,,,	first another
,,,.22,,	first both
.13,,,,,	first caulk
.15,,,,,	first cust
.11,,,,,	first drain
.15,,,,,	first drill
.13,,,,,	first flat
,.12,,,,	first frame
.11,,,,,	first her
-.32,,,.27,,	first new
-.12,,,.19,,	first oak
.14,,,,,	first our
.14,,,,,	first prime
,.16,,,,	first shim
-.14,.21,,,,	first some
.11,,,,,	first strike
.13,,,,,	first those
.13,,,,,	first wall
.17,,,,,	first white
,-.29,,.29,,	group eachOf
.3,,,,,	group pair
.11,,,,,	group range
-.2,,,,,	head adhesive
.16,,,,,	head air
.16,,,,,	head anything
.16,,,,,	head baffles
-.13,,,,,	head bar
.21,,,,,	head beadboard
,,.13,,,	head belts
.11,,,,,	head bench
.13,,,,,	head bit
-.11,,.11,,,	head blade
-.23,,.12,,,	head blocks
,.11,,,,	head blue tape
,,,.16,,	head boards
-.23,.34,,,,	head bolts
-.13,,,,,	head bracket
,,,-.12,.18,	head brads
-.3,,.17,.17,,	head brick
,.14,,,,	head cabinet screws
,-.21,.28,,,	head cabinets
-.33,,,.35,,	head cable
.33,,,-.2,,	head carcasses
.15,,,,,	head carpet
.14,,,,,	head ceiling
,,.17,,,	head ceiling tile
.16,,,,,	head coat
.14,,,,,	head code
.21,,,-.1,,	head coil
.13,,,,,	head cold
.18,,,,,	head copper
-.11,,,.16,,	head couplings
.18,,,,,	head cricket
.21,,,,,	head deep
-.11,,,.19,,	head downspout
.18,,,,,	head drain
.36,,,,,	head drops
.11,,,,,	head dumpster
-.26,.26,,,,	head eggshell
-.32,.39,,,,	head elbow
-.33,,,.24,,	head elbows
.19,,,,,	head electrical
-.17,,,,,	head end caps
,,.17,,,	head enough
-.32,,.18,,,	head epoxy
.16,,,,,	head except
.17,,,,,	head fan
.14,,,,,	head fascia
-.13,,,,,	head filter
-.37,,.11,.23,,	head filters
,.25,,-.17,,	head fire caulk
,,,.1,,	head first coat
.11,,,,,	head flange
,,,.2,,	head flashing tape
,.28,,,,	head flex
-.32,,,.1,,	head foam
.21,,,,,	head folks
-.15,.21,,,,	head gasket
.1,,,,,	head gate
.16,,,,,	head glass
,,.15,,,	head glue's
,,,.17,,	head grid
-.33,,,.4,,	head hall
-.12,,.16,,,	head handles
.13,,,,,	head handrail
-.1,.12,,,,	head hangers
,,.19,,,	head hardware
.14,,,,,	head header
.16,,,,,	head heat mat's
.13,,,,,	head heat pump
.11,,,,,	head height's
-.11,,,,.12,	head hidden clips
.26,,,,,	head high
,,,,.14,	head hinges
.17,,,,,	head hole
.11,,,,,	head holes
,,,.11,,	head hot
.14,-.13,,,,	head insulation
.15,,,,,	head joint
.12,,,,,	head joist
,,.12,,,	head kit
,.17,,,,	head knife
-.38,,.12,.18,,	head knobs
,,.1,,,	head lacquer
,.13,,,,	head ladder
.15,,,,,	head landing
.11,,,,,	head leg
.11,,,,,	head level
-.14,,,,,	head lid
.22,,,,,	head lights
.14,,,,,	head line set
.21,,,,,	head loose
.24,,,,,	head maglock
,,,.14,,	head mesh
.19,,,,,	head min
.11,,,,,	head mirror
-.23,.24,,,,	head mortar
-.16,.3,,,,	head mud
-.13,,,,,	head nm
,.13,,,,	head opening's
.16,,,,,	head outlet
,,.21,-.1,,	head outlets
,.1,,,,	head outside
.22,,,,,	head paper
,.15,,,,	head pins
.25,,,,,	head pipe's
.15,,,,,	head pipes
-.39,.33,,,,	head plates
.11,,,,,	head posts
.27,,,-.11,,	head pressure
-.22,,,,,	head primer
.12,,,,,	head pump
,,,.21,,	head pvc
,.11,,,,	head rail
-.26,,,.24,,	head receptacles
-.12,.23,,,,	head reducer
-.17,,,.23,,	head rim
,,,.13,,	head rim joist
.23,-.14,,,,	head rock
.15,,,,,	head round
.17,,,,,	head run
-.17,,.12,,,	head sealant
-.28,.11,,,,	head sealer
,,,.23,,	head set
-.2,.14,,,,	head shims
,,.13,,,	head shingles
.15,,,,,	head shower
.14,,,,,	head shower walls
.34,,,,,	head sides
.18,,,,,	head slow
,,,.1,,	head sod
.11,,,,,	head soffit
.15,,,,,	head soffit vents
.1,,,,,	head sorry
.13,,,,,	head splice
.17,,,,,	head square
.26,-.13,,,,	head stack
,,.1,,,	head stain
.19,,,,,	head staple
.16,,,,,	head static
.27,,,,,	head still
-.15,,,,,	head stone
.12,,,,,	head straight
-.18,,,,,	head strainers
.11,,,,,	head string
-.1,,,.14,,	head structural screws
.13,,,,,	head subfloor
-.13,,,,.2,	head supply line
,.16,,,,	head sweep
.13,,,,,	head switch
.2,,,,,	head tag
.19,,,,,	head thing
.14,,,,,	head ticket
-.22,-.13,,,.12,.21	head towel bar
.18,,,,,	head track
.19,,,,,	head tread
.25,,,,,	head tub's
.1,,,,,	head two by ten
-.13,,,.13,,	head uppers
,,,.15,,	head upstairs
.13,-.15,,,,	head wall tile
.18,,,,,	head water
-.41,,,.29,,	head wax ring
,,,.22,,	head whip
.17,,,,,	head wide
,,,.12,,	head windows
,.14,,,,	joined and modal
.11,,,,,	joined start modal
,,.26,,,	kept
-.1,.29,,,,	last cue bought same
,.13,,,,	last cue need same
,.11,,,,	last use buy present other
.17,,,,,	last use measure past same
.18,,,,,	last use move modal same
,.14,,,,	last use need owed same
-.1,,,,,	last use need past same
.17,,,,,	last use null imperative other
-.15,,,,,	last use null modal other
.12,,,,,	last use null owed other
-.15,,.14,,,	last use say present other
-.21,-.14,.16,-.1,.19,	last use see imperative other
.12,,,,,	last use see owed same
,,,.12,,	last use use past same
.13,,,,,	last use use present other
.13,,,,,	last verb adjust same
.16,,,,,	last verb ask same
,.13,,,,	last verb bring same
-.15,,.11,,,	last verb call same
.17,,,,,	last verb caulk other
-.39,.22,,,,	last verb crack same
.19,,,,,	last verb cut other
,,,-.16,,	last verb doesn't same
.15,,,,,	last verb drill same
,.16,,,,	last verb feather same
-.1,,,.17,,	last verb feed same
-.19,.1,,,,	last verb figure same
.1,,,,,	last verb fill same
-.24,,.16,,.18,	last verb find other
,.11,,,,	last verb fix other
-.27,.15,,.15,,	last verb frame same
.17,,,,,	last verb fre same
.19,,,,,	last verb glue other
,.13,,,,	last verb gonna same
,,.13,,,	last verb keep other
,-.16,.19,,,	last verb land same
,,,,.15,	last verb look other
.24,,,,,	last verb measure same
.17,,,,,	last verb meter same
,.14,,,,	last verb nail same
,.23,,,,	last verb need same
.14,,,,,	last verb notch same
.16,,,,,	last verb open same
,,,,.13,	last verb order same
,-.16,,.12,,	last verb pack same
.25,-.19,,,,	last verb paint same
,.12,,,,	last verb plug same
,,,.19,,	last verb pull same
.23,,,,,	last verb rack other
,.24,,,,	last verb replace other
.2,-.16,,,,	last verb replace same
.13,,,,,	last verb rip same
.21,,,,,	last verb roll same
.11,,,,,	last verb run other
.14,,,,,	last verb scribe other
.12,,,,,	last verb see same
,,,.16,,	last verb set same
,,,.11,,	last verb shim same
,.21,,,,	last verb show same
.15,,,,,	last verb sit same
.12,,,,,	last verb snake same
.17,,,,,	last verb start other
.17,,,,,	last verb start same
,,,,.16,	last verb stop same
-.14,.11,,,,	last verb strip same
,.14,,,,	last verb sweat same
.19,,,,,	last verb tear same
,,.13,,,	last verb tell other
-.11,,,.16,,	last verb think other
,.13,,,,	last verb throw same
.2,,,,,	last verb top same
,.15,,,,	last verb trim other
.24,,-.12,,,	last verb try same
,,.13,,,	last verb turn same
,.12,,,,	last verb wait same
-.11,,,,.21,	last verb wanna same
-.11,,.17,,,	last verb want other
.11,,,,,	last verb wire same
,-.18,.29,-.11,,	left # Q
,.13,,-.19,,	left # about
-.15,,,.11,,	left # all
,.24,,,,	left # bring
-.13,.24,,,,	left # figure
-.14,.11,,,,	left # get
,,,,.1,	left # grab
,,.28,,,	left # have
.1,,,,,	left # i'm
.1,,,,,	left # just
.11,,,,,	left # living room
,.2,,,,	left # need
,,,-.12,,	left # put
-.29,.36,,,,	left # short
,,,.17,,	left # that's
-.11,,.3,,,	left # the
,,.17,,,	left # there's
-.19,.28,,,,	left # throw
,,,.27,,	left # use
.1,,,,,	left # want
-.15,.27,,,,	left # we're
-.11,.16,,,,	left &
-.16,,,,,	left (
-.12,,,,,	left +
.11,,,,,	left @
-.24,.18,,,,	left G and
.2,,,,,	left G for
.21,,,,,	left G have
.11,,,,,	left G in
.17,,,,,	left G is
-.35,.13,,,,	left N and
.16,,,,,	left N for
,-.12,,.11,,	left Q G
.13,,,,,	left Q Q
.2,,,,,	left Q in
.15,,,,,	left Q of
.12,,,,,	left Q off
.16,,,,,	left Q on
.23,,,,,	left Q over
-.11,.2,,,,	left T with
,,,.24,,	left all
,.13,,,,	left and
,,,.13,,	left are in
.11,,,,,	left as
.1,,,,,	left between
-.27,.35,,,,	left bring me
-.14,,,.25,,	left burn through
-.18,,,,.11,	left buy
.16,,,,,	left come up
-.12,-.16,.41,,,	left down to
.14,,,,,	left drill
,-.13,,.23,,	left eat
,.22,,,,	left figure
,,.17,,,	left get
-.13,.31,,,,	left get me
-.18,,,.43,,	left go through
-.32,.38,,,,	left gonna want
-.18,.14,,,,	left grab
,,,.1,,	left hang
.12,,,,,	left hold
-.15,,.45,,,	left i get
,,.16,,,	left i have
,.25,,,,	left i need
,,,.18,,	left i put
-.26,,,.35,,	left i run
,,,.3,,	left i use
.1,,,,,	left i'm
-.14,,.27,,,	left i've get
.11,,,,,	left in at
-.13,,,.3,,	left it with
-.24,.14,,.16,,	left it's get
.21,,,,,	left just
.16,,,,,	left last
-.26,,,.3,,	left lay
-.26,,.33,,,	left maybe
,.14,,,,	left me
,.18,,,,	left miss
,.19,,,,	left need
-.29,.27,,,,	left new
.26,,,-.17,,	left of the
,-.1,,,,	left on all
,,.3,,,	left only
.11,,,,,	left paint
,.16,,,,	left pick
,,,,.15,	left pick up
,,,.3,,	left put in
.13,,,,,	left read
-.23,,,,,.35	left return
,,,.13,,	left run
.13,,,,,	left scribe
-.19,,,,,.21	left send
,,,.17,,	left set
-.33,.49,,,,	left short
-.11,.19,,,,	left still need
,,,.1,,.12	left take
,,,.15,,	left that's
.23,,,,,	left there be
,,.15,,,	left there's
,,,.4,,	left through
-.24,.23,,,,	left throw
,,.16,,,	left try
.15,,,,,	left up to
,,,.29,,	left use
-.13,,.25,,,	left we have
,.28,,,,	left we need
,,,.26,,	left we use
-.15,.27,,,,	left we're
.15,,,,,	left without
.2,,,,,	left you
-.11,.16,,,,	left1 &
-.16,,,,,	left1 (
-.12,,,,,	left1 +
.11,,,,,	left1 @
,,,.24,,	left1 all
,.13,,,,	left1 and
.11,,,,,	left1 as
.1,,,,,	left1 between
-.18,,,,.11,	left1 buy
.14,,,,,	left1 drill
,-.13,,.23,,	left1 eat
,.22,,,,	left1 figure
,,.17,,,	left1 get
-.18,.14,,,,	left1 grab
,,,.1,,	left1 hang
.12,,,,,	left1 hold
.1,,,,,	left1 i'm
.21,,,,,	left1 just
.16,,,,,	left1 last
-.26,,,.3,,	left1 lay
-.26,,.33,,,	left1 maybe
,.14,,,,	left1 me
,.18,,,,	left1 miss
,.19,,,,	left1 need
-.29,.27,,,,	left1 new
,,.3,,,	left1 only
.11,,,,,	left1 paint
,.16,,,,	left1 pick
.13,,,,,	left1 read
-.23,,,,,.35	left1 return
,,,.13,,	left1 run
.13,,,,,	left1 scribe
-.19,,,,,.21	left1 send
,,,.17,,	left1 set
-.33,.49,,,,	left1 short
.19,,,,,	left1 t part.
,,,.1,,.12	left1 take
,,,.15,,	left1 that's
,,.15,,,	left1 there's
,,,.4,,	left1 through
-.24,.23,,,,	left1 throw
,,.16,,,	left1 try
,,,.29,,	left1 use
-.13,.13,,,,	left1 v buy.
,.16,,,,	left1 v need.
-.23,,,,,.35	left1 v return.
,,,.29,,	left1 v use.
-.15,.27,,,,	left1 we're
.15,,,,,	left1 without
.2,,,,,	left1 you
,.14,,,,	left2 a
,,.15,,,	left2 already
,,,.1,,	left2 are
.13,,,,,	left2 at
.15,,,,,	left2 bottom
-.2,.21,,,,	left2 bring
,,,.2,,	left2 burn
.21,,,,,	left2 call
-.19,,,.26,,	left2 cap
,.24,,-.25,,	left2 could
,,.24,,,	left2 down
.13,,,,,	left2 good
,,.2,,,	left2 have
.1,,,,,	left2 house
,.29,,,,	left2 i'm
-.18,,.19,,,	left2 i've
.16,,,,,	left2 in
.15,,,,,	left2 inspector
.2,,,,,	left2 leave
.1,,,,,	left2 loose
,.12,,,,	left2 not
-.11,,,.23,,	left2 now
.12,,,,,	left2 of
-.17,.12,,,.18,	left2 owe
,,,,.13,	left2 pick
-.18,,,.42,,	left2 put
,,,.17,,	left2 replace
.29,,,,,	left2 set
,.12,,,,	left2 short
.13,,,,,	left2 splice
-.1,,,.23,,	left2 swap
,.12,,,,	left2 tape
,.1,,,,	left2 the lady
-.28,-.16,.45,-.16,,	left2 there's
.12,,,,,	left2 tile
.16,,,,,	left2 top
,,.2,,,	left2 v have.
,.14,,,,	left2 we're
.17,,,,,	left2 wide
-.28,.37,,,,	left2 will
.15,,,,,	left2 wire
,,,.19,,	left2 with
-.16,,,,,	left3 all
.13,,,,,	left3 and
,,,.19,,	left3 are
.2,,,,,	left3 before
,,,.1,,	left3 down
.13,,,,,	left3 electrician
,,,.13,,	left3 every
.27,,,,,	left3 for
.13,,,,,	left3 gotta
.15,,,,,	left3 hall
.19,,,,,	left3 i'll
,,.22,,,	left3 i'm
.26,,,,,	left3 if
-.14,-.22,.14,,,	left3 just
,,.14,,,	left3 leave
.11,,,,,	left3 like
,.17,,,,	left3 need
.12,,,,,	left3 new
.11,,,,,	left3 nobody
.11,,,,,	left3 off
.19,,,,,	left3 only
.12,,,,,	left3 out
-.18,.18,,,,	left3 send
,,,-.16,,	left3 she
-.12,.12,,,,	left3 somebody
,,,.11,,	left3 that's
.22,,,,,	left3 they
.15,,,,,	left3 you
,.25,,,,	length after need here
-.22,.41,,,,	length after need sentence
.3,,,,,	length after none here
,.13,,,,	length after none sentence
,-.11,.3,-.12,,	length after used sentence
-.38,,.25,-.14,,	length beside get
.22,,,,,	length beside is
,.24,,,,	length beside need
-.22,.32,,,,	length beside need b person
,.16,,,,	length beside other b nobody
.12,,,,,	length beside other b other
-.17,,,.25,,	length beside run
.29,,,,,	length beside undefined is other
,,,.19,,	length beside work pp person
-.19,,.34,,,	length cue have
,.39,,,,	length cue need
,,,.31,,	length cue used
.13,,,,,	length flawed
-.17,,.19,-.18,,	length kept
-.24,.12,,.22,,	length left #
.18,,,,,	length left is
,.24,,,,	length left need
.19,,,,,	length left over
.2,,,,,	length named before surface
.3,,,,,	length named before word
-.36,.22,,,,	length named here material
-.19,.13,,.13,,	length named here word
-.11,.26,,,,	length need owed behind
,.16,,,,	length other imperative behind
-.18,-.19,,.21,,	length pointing
-.31,.32,,,,	length right and
.27,,,,,	length right by
-.18,-.19,,.21,,	length right of
-.11,-.22,,.26,,	length right up
-.14,.21,,,,	length says modal behind
,.19,,,,	length says owed behind
-.22,,,.31,,	length says past behind
,.19,,,,	length says present behind
-.44,.12,,.29,,	length sized
-.23,.22,,,,	length sold so true
-.13,,,.22,,	length use past behind
-.38,,.25,-.14,,	length verb get behind
-.26,.35,,,,	length verb need behind
-.13,,,.22,,	length verb use behind
,.23,,,,	length verb want behind
-.36,.41,,,,	length whole clause
,,,.32,,	length work past behind
-.3,-.37,.47,-.27,,	list have
-.24,.53,,,,	list need
-.29,.44,,,,	marked
-.13,,,,,	meant back 4
.15,,,,,	meant back 5
.21,,,-.11,,	meant back 6
.3,,-.14,,,	meant back 8
,-.25,,,,	meant before new
-.27,.32,,,,	meant before no
.21,,,,,	meant flawed false
-.33,.39,,,,	meant ran out
,.26,,,,	more
-.21,,.19,,,	named before tool
.2,,,,,	nameless
,,,,.21,	next cue bought same
.18,,,,,	next none same run-on
.14,,,,,	next present same stop
.17,,,,,	next present same word
,.14,,,,	next use buy imperative same
-.22,.32,,,,	next use buy modal same
.13,,,,,	next use buy past other
,,,,.16,	next use buy past same
.25,,,,,	next use have imperative same
,.14,,,,	next use move present other
.17,,,,,	next use null owed same
.31,,,,,	next use other present other
.21,,,,,	next use say modal same
-.13,,,.13,,	next use say past other
.21,,,,,	next use see imperative same
.12,,,,,	next use see past same
.22,,,,,	next use use modal same
.23,,,,,	next verb add same
.15,,,,,	next verb ask same
-.24,,,.31,,	next verb bolt same
,.12,,,,	next verb break same
,-.2,,,,	next verb bring other
,.16,,,,	next verb bring same
,.11,,,,	next verb buy same
.1,,,,,	next verb check same
.16,,,,,	next verb clamp same
.14,,,,,	next verb clean same
,.15,,,,	next verb complete other
.17,,,,,	next verb crack other
.17,,,,,	next verb cut same
.15,,,,,	next verb draw same
.19,,,,,	next verb drill same
.3,,,,,	next verb drop same
.14,,,,,	next verb feather same
-.15,.27,,,,	next verb finish same
.23,,,,,	next verb fix same
,-.13,,,.23,	next verb forget same
,.29,,,,	next verb go other
.17,,,,,	next verb gotta same
,.1,,,,	next verb grab same
.13,,,,,	next verb guess same
,,,.16,,	next verb hang same
,,,.21,,	next verb hold other
.26,,,,,	next verb hold same
,.1,,,,	next verb hook same
,.17,,,,	next verb keep same
.22,,,,,	next verb lay same
,-.14,,,,	next verb leave other
.11,,,,,	next verb let other
,.1,,,,	next verb move other
-.2,.1,,,,	next verb order same
.12,,,,,	next verb pack same
.11,,,,,	next verb patch same
.15,,,,,	next verb pick same
.29,,,,,	next verb pin same
.12,,,,,	next verb pop same
,.12,,,,	next verb pour same
.14,,,,,	next verb redo same
-.12,.21,,,,	next verb reorder same
.16,,,,,	next verb reroute same
.15,,,,,	next verb reset same
,,,.1,,	next verb scrape same
-.13,,,.12,,	next verb set same
.11,,,,,	next verb shave same
.17,,,,,	next verb sign same
.22,,,,,	next verb sister same
,,.19,,,	next verb sit other
.1,,,,,	next verb stain same
-.29,.12,.17,,,	next verb stick same
.13,,,,,	next verb strip same
,.16,,,,	next verb stuff same
-.12,.23,,,,	next verb take other
-.13,,.21,,,	next verb want other
,,,.21,,	one after need far
-.16,.23,,,,	one after need here
-.16,,,,,	one after none far
.29,,,,,	one after none here
,,,,.13,	one after used far
-.2,-.17,,.26,,	one after used here
-.28,.14,.19,,,	one beside be
-.15,.24,,,,	one beside bring
-.31,,,-.11,.13,.19	one beside buy
-.18,.27,,,,	one beside buy b nobody
.19,,,,,	one beside cut
-.11,,,,,	one beside get
.22,,,,,	one beside go
-.18,.26,,,,	one beside grab
,,.11,,,	one beside is
.18,,,,,	one beside make
.22,,,,,	one beside move b other
-.14,.3,,,,	one beside need
,.14,,,,	one beside need b other
-.13,.28,,,,	one beside need b person
-.23,.23,,,,	one beside other b nobody
-.25,,,,.14,	one beside other b other
-.17,,,,,	one beside other b person
-.16,.3,,,,	one beside other i other
-.18,,.2,,,	one beside other p person
,,,.19,,	one beside put
-.2,.2,,,,	one beside send
.15,,,,,	one beside undefined has other
,,.15,,,	one beside undefined is other
-.15,,,.23,,	one beside use
,,,.11,,	one beside work bpp nobody
,,,.15,,	one beside work bpp person
.17,,,,,	one beside work i other
,,,.13,,	one beside work pp nobody
-.17,,,.2,,	one beside work pp other
,,,.22,,	one beside work pp person
-.18,.27,,,,	one buy imperative behind
-.29,,,,.27,.15	one buy past behind
.25,,,,,	one cue back
-.11,-.12,,,.23,.12	one cue bought
,.37,,,,	one cue need
.12,,,,,	one have present behind
-.27,,.22,,,	one kept
-.18,.12,,,,	one left #
.29,,,,,	one left G
-.41,.26,,,,	one left and
-.15,.24,,,,	one left bring
-.31,,,-.11,.13,.19	one left buy
.15,,,,,	one left cut
-.19,.26,,,,	one left grab
,,.14,,,	one left has
,,,.13,,	one left in
,,.12,,,	one left is
.27,,,,,	one left it's
.11,,,,,	one left leave
-.22,.36,,,,	one left need
.14,,,,,	one left of
.17,,,,,	one left that's
.32,,,,,	one left there's
.11,-.16,,,,	one left up
-.33,,,.36,,	one left use
-.25,,,,,	one left with
.16,,,,,	one more
-.12,.27,,,,	one named before material
-.12,,,.18,,	one named before part
-.22,,.17,,,	one named before tool
,,,.16,,	one named before word
-.32,,,,,	one named here material
-.49,.19,,,,	one named here part
-.13,.28,,,,	one named here tool
-.15,.31,,,,	one need owed behind
.15,,,,,	one not ahead
-.18,,,.16,,	one null none no
-.2,.15,,,,	one other copula before
-.39,.27,.15,,,	one other imperative behind
-.23,,.18,,,	one other past behind
-.15,,,,.18,	one other present behind
,.22,,,,	one right T
-.14,.26,,,,	one right and
-.28,.19,,.12,,	one right are
.26,,,,,	one right before
-.13,,.15,,,	one right in
.21,,,,,	one right leave
.27,,,,,	one right of
-.18,,,,.13,	one right the
-.16,,,.23,,	one right up
.13,,,,,	one say imperative behind
-.2,.15,,,,	one says copula before
,.23,,,,	one says imperative behind
-.21,,,.24,,	one says none no
,.2,,,,	one says owed behind
-.21,,,.11,,	one says past before
-.11,,,.17,,	one says past behind not
-.39,,,,,	one sized
.3,,,,,	one then move pp
,,,.14,,	one then other b
,,,-.11,,	one then other p
-.14,.12,,,,	one then undefined is
,,,,.21,	one then undefined will
,.14,,,,	one then work b
-.24,,,.22,,	one then work pp
,.22,,,,	one true
.12,,,,,	one verb ask behind
-.2,.15,,,,	one verb be before
-.2,.3,,,,	one verb bring behind
-.26,,,,.16,.15	one verb buy behind
.19,,,,,	one verb cut behind
.22,,,,,	one verb find behind
-.12,,.13,,,	one verb get behind
,,,,.16,	one verb go behind
-.18,.26,,,,	one verb grab behind
.12,,,,,	one verb leave behind
-.16,.32,,,,	one verb need behind
-.18,,,.16,,	one verb null no
,,,.11,,	one verb put behind
-.2,.2,,,,	one verb send behind
,.13,,,,	one work imperative behind
.19,,,,,	one work owed behind
-.4,.17,,.25,,	one work past before
,,,.29,,	one work past behind
.11,,,,,	opens cause
-.28,,,.42,,	opens clause area
-.25,,,,,	opens clause count
-.24,.12,,.22,,	opens clause length
-.18,.12,,,,	opens clause one
-.19,,,,,	opens clause pack
-.15,,.11,,,	opens clause volume
-.21,.1,,,,	opens clause weight
.2,,,,,	opens oh
.18,,,,,	opens ok
-.13,.29,,,,	opens plus
-.17,,.2,,,	pack after bought far
-.17,.35,,,,	pack after have far
.2,-.17,,-.12,,	pack after have here
,.25,,,,	pack after have sentence
-.16,.45,,,,	pack after need here
,.26,,-.2,,	pack after need sentence
-.22,,,,,	pack after none far
,.23,,,,	pack after none here
-.15,,,,,	pack after none sentence
,,,,.13,	pack after returned far
-.13,,,,,	pack after used far
-.12,-.18,,.16,,	pack after used here
-.33,,,,,	pack after used sentence
.24,,,,,	pack bag
,.22,,,,	pack beside bring
-.15,,,,.13,	pack beside buy
,.29,,,,	pack beside buy b nobody
,,.16,,,	pack beside get
-.15,,,.33,,	pack beside go
-.22,.12,,,,	pack beside grab
-.14,,.35,,,	pack beside have
,,.17,,,	pack beside have b person
,,,.21,,	pack beside move p nobody
,,,.24,,	pack beside move p person
,.15,,,,	pack beside need b nobody
-.19,.38,,,,	pack beside need b other
-.34,,,,,	pack beside nothing
,.27,,,,	pack beside other b nobody
-.24,.34,-.14,,,	pack beside other b other
,-.16,.28,,,	pack beside other p nobody
-.19,-.15,,.32,,	pack beside other p other
,,.28,,,	pack beside other p person
-.14,-.18,,-.15,.35,	pack beside other pp nobody
-.24,,,-.16,.25,	pack beside pick
-.21,,,.24,,	pack beside take
,,,.2,,	pack beside use
-.11,,,.18,,	pack beside use b person
,,,.28,,	pack beside use pp person
-.19,.34,,,,	pack beside want
,.21,,,,	pack beside work b other
,-.28,,.19,,	pack beside work bpp person
-.14,,,.18,,	pack beside work pp other
-.15,-.21,,.49,,	pack beside work pp person
,.32,,,,	pack buy imperative behind
.28,,,,,	pack can
,.1,,,,	pack cue back
-.48,-.18,-.24,,.55,	pack cue bought
,,.55,,,	pack cue have
,.62,,,,	pack cue need
,,,.17,,	pack cue used
-.14,,.35,,,	pack have present behind
,-.23,.34,,,	pack kept
-.19,,,,,	pack left #
,.11,,,,	pack left +
-.21,,,.32,,	pack left G
-.32,.27,.13,-.4,,	pack left Q
,.29,,,,	pack left and
,.24,,,,	pack left bring
-.15,,,,.13,	pack left buy
-.48,,.43,-.15,,	pack left get
-.27,,,,.16,	pack left grab
-.14,,.35,,,	pack left have
.14,,,,,	pack left in
.14,,,,,	pack left of
,,-.18,.27,,	pack left take
-.34,-.26,.46,-.24,,	pack left there's
,,,.38,,	pack left through
-.29,,,,.18,	pack left up
,,,.13,,	pack left use
-.28,.53,,,,	pack more
-.17,,.36,,,	pack move past before
,,,.17,,	pack move past behind
-.18,-.21,,.34,,	pack named before area
.11,,,,,	pack named before part
.29,,,,,	pack named before surface
-.41,,,,,	pack named here material
.11,,,-.11,,	pack named here part
-.11,.25,,,,	pack named here surface
-.47,,.16,,,	pack named here word
,,.14,,,	pack need modal behind
,.27,,,,	pack need owed behind
-.36,.27,,,,	pack not ahead
-.28,,.24,,,	pack null copula behind
-.3,.15,,,,	pack null none no
,.17,,,,	pack other imperative behind
-.27,.4,,,,	pack other modal behind
-.15,-.13,,,.14,	pack other past behind
.15,,,-.15,,	pack pointing
-.31,,,,,	pack right #
-.28,,-.18,.27,,	pack right Q
-.1,,,,,	pack right T
-.32,.23,,,,	pack right and
-.32,-.27,-.26,.48,,	pack right go
,,.15,,,	pack right in
,,.32,,,	pack right leave
.18,-.29,.19,,,	pack right no
.2,,,,,	pack right of
,,.22,,,	pack right on
-.38,,,,,	pack right the
-.21,.22,,-.18,,	pack right to
-.23,,.11,,,	pack says copula behind
-.18,.55,,,,	pack says imperative behind
-.18,,.18,-.14,,	pack says modal before
,.29,,,,	pack says modal behind
-.24,,,,,	pack says none no
,.41,,,,	pack says owed behind
-.28,,.27,,,	pack says past before
,,,.27,,	pack says past behind
-.28,,,.22,,	pack says past behind not
,.29,-.13,-.12,,	pack says present before
-.18,,.11,,,	pack says present behind
-.29,.1,,,,	pack sized
-.47,,,,,	pack sold so false
-.31,,,,,	pack sold so true
-.32,-.27,-.26,.48,,	pack then move p
,,.36,,,	pack then move pp
,-.1,,.13,,	pack then other p
.34,,,,,	pack tub
,,,.14,,	pack use past behind
,,,.35,,	pack use present behind
,.14,,,,	pack verb bring behind
-.21,,,.17,,	pack verb go behind
-.2,.18,,,,	pack verb grab behind
-.14,,.35,,,	pack verb have behind
,,.3,,,	pack verb leave before
-.27,,.22,,,	pack verb null behind
-.3,.15,,,,	pack verb null no
-.19,,,-.13,.35,	pack verb pick behind
,.19,,,,	pack verb put behind
-.22,,,.24,,	pack verb take behind
,,,.19,,	pack verb use behind
-.14,.28,,,,	pack verb want behind
-.4,,,,,	pack whole clause
-.14,.33,,-.11,,	pack work imperative behind
-.15,,,.51,,	pack work past behind
-.18,,,,,	plural count
.11,,,,,	plural length
-.39,,.25,,,	plural volume
-.32,.19,,,,	plural weight
.14,,,,,	pointer after none sentence
.14,,,,,	pointer cue have
,,,.1,,	pointer cue used
-.12,,,.24,,	pointer named before material
.29,,,,,	pointer named before part
,,,.13,,	pointer right #
-.1,,,.14,,	pointer says past behind
-.3,,,.25,,	pointing
-.22,.27,,,,	right &
,.21,,,,	right (
-.17,,,.13,,	right /
,.16,,,,	right / G
,.13,,,,	right @
.21,,,,,	right Q #
.16,,,,,	right Q Q
.19,,,,,	right T and
.12,,,,,	right across
-.15,,,,,	right and a
.15,,,,,	right are Q
.12,,,,,	right are in
.12,,,,,	right below
.14,,,,,	right bend
.18,,,,,	right bend #
.14,,,,,	right break
,.14,,,,	right can
,,,.14,,	right cut
,,,.17,,	right cut #
,,.15,,,	right do #
,,,.16,,	right don't
.13,,,,,	right down #
,-.23,,.28,,	right each
,,,.21,,	right glue
.13,,,,,	right go down
,,.3,,,	right here
,-.13,.25,,,	right here #
,,,.44,,	right in #
.27,,,,,	right in Q
,,,.15,,	right in it
.22,,,,,	right in there
.14,,,,,	right is do
,-.11,,.17,,	right is go
,.17,,,,	right is gonna
,,,.12,,	right is loose
,,.35,,,	right leave
,,.26,,,	right leave #
,,.23,,,	right leave over
,.12,,,,	right more
-.18,.27,,,,	right more #
-.1,.22,,,,	right need #
,-.2,.19,,,	right no #
.16,,,,,	right now #
,-.2,,,,	right of it
-.11,,,.16,,	right of them
.15,,,,,	right off #
-.11,,,.25,,	right on #
-.16,,.13,,,	right on G
.19,,,,,	right on Q
,-.18,.27,-.18,,	right on site
.19,,,,,	right out #
-.13,,,,,	right rot
,,,,.12,	right run
,.2,,,,	right short
,.31,,,,	right short #
,,.2,,,	right sit
,,,.11,,	right so
,,.33,,,	right still
,,.13,,,	right strip #
-.31,.16,,,.19,	right the Q
.15,,,,,	right through
.25,,,,,	right to Q
.15,,,,,	right to go
.11,,,,,	right too #
,,.18,,,	right turn
.17,,,,,	right up to
,,,.17,,	right use
-.14,,,.25,,	right use #
-.13,.18,,,,	right with me
.16,,,,,	right with the
.14,,,,,	right without
-.22,.27,,,,	right1 &
,.21,,,,	right1 (
-.17,,,.13,,	right1 /
,.13,,,,	right1 @
.12,,,,,	right1 across
.12,,,,,	right1 below
.14,,,,,	right1 bend
.14,,,,,	right1 break
,.14,,,,	right1 can
,,,.14,,	right1 cut
,,,.16,,	right1 don't
,-.23,,.28,,	right1 each
,,,.21,,	right1 glue
,,.3,,,	right1 here
,,.35,,,	right1 leave
,.12,,,,	right1 mark.
,.12,,,,	right1 more
-.13,,,,,	right1 rot
,,,,.12,	right1 run
,.2,,,,	right1 short
,,.2,,,	right1 sit
,,,.11,,	right1 so
,,.33,,,	right1 still
.15,,,,,	right1 through
,,.18,,,	right1 turn
,,,.17,,	right1 use
,,,.13,,	right1 v buy.
,,,.17,,	right1 v use.
.14,,,,,	right1 without
,,,.11,,	right2 @
.13,,,,,	right2 N
.13,,,,,	right2 N.
.18,,,,,	right2 about
.1,,,,,	right2 around
,.15,,,,	right2 ceiling
.13,,,,,	right2 down
,.21,,-.1,,	right2 each
,.18,,,,	right2 for
.11,,,,,	right2 from
-.16,-.18,,.28,,	right2 front
,.14,,,,	right2 gonna
,-.18,,.13,,	right2 hang
.12,,,,,	right2 has
,.13,,,,	right2 kitchen
.2,,,,,	right2 leak
-.13,,.29,-.14,,	right2 my
.17,,,,,	right2 new
-.15,,,,,	right2 of
.25,,,,,	right2 old
,,.15,,,	right2 over
.13,,,,,	right2 read
.18,,,,,	right2 set
,,,.16,,	right2 side
,-.18,.27,-.18,,	right2 site
.15,,,,,	right2 so
,,,.13,,	right2 still
,,,.15,,	right2 them
-.14,.14,,,,	right2 v buy.
-.15,,,.14,,	right2 v say.
,.1,,,,	right2 wait
,.12,,,,	right2 wall
.15,,,,,	right2 you
.17,,,,,	right3 about
-.13,,.23,,,	right3 basement
.12,,,,,	right3 bottom
.23,,,,,	right3 ceiling
,-.11,,,,	right3 closet
.19,,,,,	right3 corner
.12,,,,,	right3 deep
.19,,,,,	right3 den
.16,,,,,	right3 from
.17,,,,,	right3 hallway
.14,,,,,	right3 hang
.14,,,,,	right3 house
-.12,.18,,,,	right3 if
.14,,,,,	right3 kitchen
,.13,,,,	right3 long
,-.11,,,,	right3 no
,,,.19,,	right3 now
.11,,,,,	right3 off
.25,,,-.17,,	right3 over
-.29,,.1,,,	right3 shop
.11,,,,,	right3 split
.26,,,,,	right3 still
-.13,-.23,.35,,,	right3 truck
.14,,,,,	right3 wall
.11,,,,,	right3 when
.17,,,,,	right3 where
.13,,,,,	right3 x
,-.14,,,,	says owed behind not
-.16,,,,,	sold so false
-.39,,,,,	sold so true
,,,.21,,	sort area
-.16,,,,,	sort pack
-.44,,,,,	sort volume
,,.11,,,	then arrive
,,.14,,,	then arrive pp
.14,,,,,	then bend
.14,,,,,	then bend pp
.12,,,,,	then break
.12,,,,,	then break p
-.13,.16,,,.12,	then buy b
.11,,,,,	then complete
,,,.12,,	then cut bpp
,,,,.19,	then didn't
,,,,.19,	then didn't will
-.22,.12,.15,,,	then do b
,.11,,,,	then doesn't
,.11,,,,	then doesn't will
.17,,,,,	then drop
.18,,,,,	then drop pp
,,,.21,,	then glue
,,,.21,,	then glue pp
.14,,,,,	then go b
,,,.21,,	then go p
.14,,,,,	then hang
,,.25,,,	then leave
,,.27,,,	then leave pp
,,,.21,,	then move p
,,.29,,,	then move pp
,,,,.3,	then order
-.13,,,,,	then rot
-.13,,,,,	then rot pp
.13,,,,,	then say b
,,,.13,,	then say pp
.11,,,,,	then scratch
.25,,,,,	then scratch b
,,,.11,,	then seal
.15,,,,,	then send
-.11,.19,,,,	then should
-.11,.19,,,,	then should will
,,.23,,,	then sit
,,.24,,,	then sit i
,.14,,,,	then snap
,.14,,,,	then snap pp
,.12,,,,	then stay s
.22,,,,,	then strip pp
,,,.15,,	then swap pp
-.12,,.19,,,	then turn b
,,,.17,,	then use
,,,.24,,	then use pp
.17,,,,,	then wait
.12,,,,,	then walk
.12,,,,,	then walk b
.13,,,,,	then want b
-.3,,.1,.14,,	unit L
-.2,,,.12,,	unit bag
,,,-.18,,	unit bottle
-.15,,,,,	unit box
-.13,,,,,	unit bundle
-.4,,,.25,,	unit can
.44,,,,,	unit coat
-.32,.13,,,,	unit each
-.38,,,,,	unit from said
-.13,.11,,,,	unit from shared
-.36,,.16,,,	unit gal
-.25,-.12,.14,-.19,.19,	unit length
,.34,,,,	unit pack
-.28,,,.25,,	unit pail
-.41,.18,,,,	unit pair
-.29,.28,,,,	unit qt
-.42,,,,,	unit roll
-.42,,,.28,,	unit sheet
-.47,.25,,.11,,	unit stick
-.35,.13,,,,	unit tub
-.35,.27,,,,	unit tube
-.28,.27,,,,	unit yd
,,,.13,,	use buy before
,.1,,,,	use buy behind
,.29,,,,	use buy imperative behind
,.24,,,,	use buy modal behind
,-.24,,,.42,	use buy past behind
,,,,.11,	use move owed behind
,.15,,,,	use need present behind
.13,,,,,	use null modal before
,.21,,,,	use other imperative behind
,.12,,,,	use other owed behind
.13,,,,,	use say past before
.17,,,,,	use say past behind
-.23,,,.34,,	use use before
,,,.16,,	use use behind
-.23,,,.34,,	use use past before
,,,.2,,	use use past behind
,,,.35,,	use use present behind
,,.12,,,	verb arrive past
.14,,,,,	verb be past
.18,,,,,	verb bend before
.18,,,,,	verb bend past
.11,,,,,	verb bow before
.19,,,,,	verb break past
,.22,,,,	verb bring behind
,.2,,,,	verb bring modal
-.12,.18,,,,	verb bring present
,,,.19,,	verb burn behind
,,,.19,,	verb burn past
,,,,.14,	verb buy behind
,.21,,,,	verb buy imperative
-.16,-.13,,,.23,	verb buy past
,,,.16,,	verb can behind
,,,.11,,	verb can modal
.24,,,,,	verb cap past
-.19,,,.25,,	verb change behind
-.12,,,.21,,	verb change present
.17,,,,,	verb chip past
,,,.14,,	verb clear behind
.14,,,,,	verb come behind
.1,,,,,	verb ding behind
.11,,,,,	verb ding past
,,.1,,,	verb do before
-.28,,.15,,,	verb do imperative
.11,,,,,	verb doesn't modal
.1,,,,,	verb dont modal
.13,,,,,	verb drill behind
.11,,,,,	verb drill past
.14,,,,,	verb drop before
,.2,,,,	verb dump before
,.12,,,,	verb dump present
,.13,,,,	verb falta behind
,.13,,,,	verb falta owed
.1,,,,,	verb feel behind
.1,,,,,	verb feel modal
-.13,.24,,,,	verb figure imperative
.11,,,,,	verb finish behind
.16,,,,,	verb finish modal
,,,.11,,	verb float behind
-.11,.18,,,,	verb forget behind
,,.18,,,	verb fre behind
,,.16,,,	verb fre past
,.39,,,,	verb get imperative
,.17,,,,	verb get owed
,,.19,,,	verb get past
,,,.27,,	verb go past
-.11,.21,,,,	verb guess behind
-.11,.21,,,,	verb guess present
,,,.13,,	verb hang behind
,,,.28,,	verb hang past
,.17,,,,	verb i'll behind
,.17,,,,	verb i'll modal
-.11,,,.21,,	verb lay behind
-.11,,,.22,,	verb lay past
,,.13,,,	verb leave before
,,.12,,,	verb leave past
,.12,,,,	verb make imperative
-.21,.3,,,,	verb miss behind
,.16,,,,	verb need behind
,.16,,,,	verb need owed
,.19,,,,	verb order behind
-.16,.29,,,,	verb order imperative
,,,,.33,	verb order past
,,,,.14,	verb owe behind
,,,,.14,	verb owe present
,,,,.18,	verb pick behind
,.19,,,,	verb pick imperative
,-.22,,-.15,.44,	verb pick past
.13,,,,,	verb pull present
,.17,,-.2,,	verb put imperative
.22,,,,,	verb put modal
,,,.23,,	verb put past
,.11,,,,	verb read before
,,,.16,,	verb replace before
,,,.12,,	verb replace behind
,,,.26,,	verb replace past
,,,,.16,	verb run before
.14,,,,,	verb sand owed
,,,.16,,	verb screw behind
,,,.16,,	verb screw past
,,,.1,,	verb seal past
,,,,,.14	verb send behind
,,,,,.23	verb send past
.14,,,,,	verb send present
,,,.16,,	verb set behind
,,,.16,,	verb set past
.14,,,,,	verb shim before
.16,,,,,	verb shim behind
.21,,,,,	verb shim past
,,,.12,,	verb sister past
,-.11,,,,	verb sit owed
.17,,,,,	verb snake behind
.18,,,,,	verb snake past
-.23,.34,,-.16,,	verb snap past
,,,.14,,	verb stagger past
-.31,.16,,.17,,	verb stain before
-.13,,,,,	verb stain past
.22,,,,,	verb strip before
.22,,,,,	verb strip past
-.18,,,.25,,	verb swap before
-.12,,,.32,,	verb swap past
-.1,.26,,-.16,,	verb take modal
.11,,,,,	verb tell behind
,,,,.11,	verb throw imperative
,,.16,,,	verb try behind
.22,,,,,	verb turn behind
.1,,,,,	verb turn past
-.23,,,.34,,	verb use before
,,,.16,,	verb use behind
,,,.29,,	verb use past
,,,.35,,	verb use present
.12,,,,,	verb wait present
-.11,.18,,,,	verb want modal
,.15,,,,	verb want present
-.26,.1,,-.16,,	volume after have sentence
,-.12,.26,-.13,,	volume after need far
,.23,,,,	volume after need here
-.14,.36,,,,	volume after need sentence
-.22,,,,,	volume after none far
-.3,,,.25,,	volume after none sentence
-.29,,,.13,,	volume after used sentence
,,.3,,,	volume beside have
,,.26,,,	volume beside have b person
,.26,,,,	volume beside need
,.28,,,,	volume beside need b person
-.21,,,,,	volume beside nothing
,.24,,,,	volume beside other b nobody
,,,.24,,	volume beside use
,,,.23,,	volume beside use pp nobody
-.33,,.59,,,	volume cue have
,.23,,,,	volume cue need
-.32,,,.27,,	volume cue used
-.11,,.36,,,	volume have present behind
-.15,,.11,,,	volume left #
-.13,,,,,	volume left and
,,.16,,,	volume left have
,.1,,,,	volume left need
,,,.14,,	volume left use
-.3,,.24,,,	volume named before material
-.2,,.22,,,	volume named here finish
-.35,.18,,,,	volume named here material
,,-.13,,,	volume named here word
,.24,,,,	volume need owed behind
,.24,,,,	volume other imperative behind
-.44,,,,,	volume right #
-.21,.29,,,,	volume right and
,,.22,,,	volume right leave
-.25,.43,,,,	volume says imperative behind
,.24,,,,	volume says owed behind
-.28,,,.16,,	volume says past before
-.2,,,,,	volume says past behind
-.29,-.15,.27,,,	volume says present behind
-.13,,,,,	volume sold so false
-.32,,.17,,,	volume sold so true
,,.22,,,	volume then move pp
,,,.24,,	volume use past behind
-.11,,.36,,,	volume verb have behind
,.26,,,,	volume verb need behind
,,,.24,,	volume verb use behind
-.21,.1,,,,	weight beside nothing
-.22,-.16,,.27,,	weight cue used
-.21,.1,,,,	weight left #
.26,,,,,	weight named before part
-.11,,,,,	weight null none no
-.11,,,,,	weight says none no
,,,.12,,	weight says past behind
-.29,,,,,	weight sold so false
-.11,,,,,	weight verb null no
,.22,,,,	who nobody owed
,,.33,,,	who nobody present
,,.24,,,	whole false
-.1,,,,,	whole true
`;

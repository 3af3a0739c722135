/** Written by `tests/learn/goods.ts`: none, need, have, used, bought, returned, each weight after a comma, then what was seen. */
export const FATE = `
,.2,,,,	after &
-.09,,,,,	after (
.06,,,,,	after -
-.05,,,.05,,	after /
.23,,,,,	after above
-.1,,.18,,,	after acclimate
,,.05,,,	after account
.2,-.07,,,,	after actually
-.09,,,.18,,	after add
.06,,,,,	after after
,.05,,,,	after along
.07,,,,,	after already
,,,.12,,	after anybody
,.06,,,,	after anybody's
.16,,,,,	after arriba
,,.06,,,	after arrive
.07,,,,,	after backwards
,,,.21,,	after bad
.04,,,,,	after bar
,,.11,,,	after basement
-.16,-.04,,.29,,	after bathroom
.04,,,-.12,,	after beat
-.04,-.07,.09,,,	after bench
.13,,,,,	after bend
.05,,,,,	after big
,.07,,,,	after bleeding through
.16,-.14,,,,	after board
.09,,,,,	after book
,.14,,,,	after bought far imperative
,,.07,,,	after bought far none
,,,,,.05	after bought far past
,-.13,,-.05,.29,	after bought here
,-.15,,-.09,.28,	after bought here past
,,,,.05,	after bought here run-on
-.12,,,,.2,	after bought sentence
-.15,-.14,,.12,.11,	after bought sentence and
-.11,-.14,,-.14,.28,	after bought sentence comma
.09,,,,,	after bought sentence copula
-.12,-.17,,-.18,.29,	after bought sentence none
-.14,,,.14,,	after bought sentence past
.24,,,,,	after bought sentence run-on
.2,,,,,	after bow
.26,-.2,,,,	after brass
.07,,,,,	after bridge
,.12,,,,	after bring
-.18,.26,,,,	after brush
.19,,,,,	after bury
-.29,.18,,,.08,	after buy
.25,,,,,	after buzz
-.18,,.26,,,	after came off
-.23,.13,.14,,,	after carton
.05,,,,,	after catch
,-.18,.12,,,	after cellar
,,,.12,,	after change
.09,,,,,	after channel
.2,,,,,	after chatter
,,.1,,,	after clean
.1,,,,,	after clear
.05,,,,,	after clip
,,,.06,,	after close
.08,,,,,	after closet
.08,,,,,	after coat
,,,.09,,	after complete
.21,,,,,	after corridor
.13,-.24,,,,	after counter
.27,,,-.1,,	after crook
,,,.05,,	after crumbl
.14,,,,,	after crush
.05,,,,,	after daylight
.06,,,,,	after deal
.16,,,,,	after deck
.08,,,,,	after deep
-.1,,,,,	after deliver
.2,,,,,	after den
,,,,.1,	after didn't
.06,,,,,	after ding
.13,,,,,	after dining room
,.07,,,,	after doesn't
.12,,,,,	after drain
,,,.12,,	after drill
.06,,,,,	after drive
.08,,,,,	after drop
.12,,,,,	after drywall
,.1,,,,	after dump
.07,,,,,	after dust
-.1,,,.13,,	after each
-.08,.26,,-.05,,	after else
.11,,,,,	after everything
.1,,,,,	after everywhere
-.34,,.22,,,	after extra
.24,,,,,	after face
-.15,.22,,,,	after factory
-.13,,,.22,,	after far
,.05,,,,	after fell off
,,,.15,,	after fireplace
.12,,,,,	after first coat
,.06,,,,	after flash
.07,,,,,	after flat
.08,,,,,	after flip
.12,,,,,	after floor
.13,,,,,	after foot
,,,.09,,	after front
-.08,,,.15,,	after frost
,,.12,,,	after garage
,,,.16,,	after gas
,,,.12,,	after glue
-.11,,,.17,,	after green
.28,-.16,,,,	after grout
.16,,,,,	after hallway
-.12,.26,,,,	after happen
,,-.13,.06,,	after hasn't
,.06,,,,	after have far comma
,.04,,,,	after have far modal
,.1,,,,	after have far owed
-.11,,,,,.13	after have far past
.16,,,,,	after have here comma
.05,,,,,	after have here none
.17,,,,,	after have here past
.09,,,,,	after have here stop
.08,,,,,	after have here word
,.08,,,,	after have sentence comma
,.3,,,,	after have sentence imperative
-.31,.48,,,,	after have sentence modal
-.06,,.2,-.19,,	after have sentence none
,.14,,,,	after have sentence owed
.25,,,,,	after have sentence past
,.21,,,,	after have sentence word
-.13,.16,,,,	after haven't
.06,,,,,	after he's
.11,,,,,	after heat
,,.12,,,	after here
.05,,,,,	after high
.11,,,,,	after his
.21,,,-.11,,	after hole
.11,,,,,	after holes
.27,,,,,	after hollow
-.36,.26,.16,,,	after home
-.1,,,.18,,	after hot
-.07,.11,,,,	after inspector
.07,,,,,	after install
,,,.09,,	after into
-.12,.09,.05,,,	after job
,,,.09,,	after kicks out
-.18,.16,,,,	after lacquer
.1,,,,,	after lane
.06,,,,,	after latch
.21,,,-.04,,	after laundry
.06,,,,,	after leak
-.14,.1,,,,	after lean
,,.17,,,	after leaning
,,,.09,,	after let
.16,,,,,	after let go
-.14,,.08,,,	after little
.12,,,,,	after live
.07,,,,,	after look
-.19,.04,.14,,,	after lot
.17,,,,,	after lunch
.16,,,,,	after mark
.23,,,,,	after mask
.06,,,,,	after maybe
.27,,-.12,,,	after mind
-.07,.21,,,,	after mine
.16,,,,,	after miter
,,,.19,,	after mount
.05,,,,,	after mud
.07,,,,,	after need far and
,.05,,,,	after need far imperative
.06,,,,,	after need far modal
.18,,,,,	after need far word
-.11,.22,,,,	after need here comma
,.22,,,,	after need here none
,.09,,,,	after need here owed
,.12,,,,	after need here past
,.08,,,,	after need here run-on
,.13,,,,	after need here stop
,.26,,,,	after need sentence and
,.43,,,,	after need sentence comma
-.1,.83,,,,	after need sentence none
.15,,,,,	after need sentence owed
-.24,,.14,,,	after need sentence past
,.06,,,,	after need sentence present
.07,,,,,	after need sentence word
,,.04,,,	after next
,.1,,,,	after none far owed
.09,,,,,	after none far run-on
,.04,,,,	after none sentence imperative
,-.1,,,.11,	after none sentence stop
.11,,,,,	after north
,.08,,,,	after notch
.23,,,,,	after nursery
-.25,.04,,.2,,	after office
.08,,,,,	after one's
-.31,.26,,,,	after ones
,.04,,,,	after opened up
.06,,,,,	after or
-.13,,,,.31,	after order
.17,,,,,	after oughta
,.05,,,,	after our
,.12,,,,	after owner
.15,,,,,	after painted shut
.13,,,,,	after pantry
,.08,,-.06,,	after paper
.1,,,,,	after parking lot
.13,,,,,	after past
-.05,.18,,,,	after peel
,.1,,,,	after pick
,,,.17,,	after pile
.14,,,,,	after plate
,.21,,-.12,,	after please
.17,,,,,	after plumb
-.15,-.07,.29,,,	after popcorn
,.12,,,,	after promise
,,,.05,,	after rake
.12,,,,,	after re
-.08,,.25,,,	after real
-.09,,,.18,,	after replace
.23,,,,,	after require
.08,,,,,	after returned far copula
-.08,,.16,,,	after returned far none
,,,,.14,	after returned far past
.11,,,,,	after returned here
.12,,,,,	after returned here copula
.08,,,,,	after returned here past
.05,,,,,	after returned here start
-.21,,,,.19,	after returned sentence
,.05,,,,	after returned sentence run-on
.17,,,,,	after ring
-.09,,,.05,,	after roll
.06,,,,,	after roof
-.14,,,,,.08	after rough opening's
.06,,,,,	after sand
,,.1,,,	after scrap
.08,,,,,	after scrape
.13,,,,,	after scratch
.04,,,,,	after scribe
,,,.08,,	after second
.09,,,,,	after see
,.09,,,,	after she
-.26,-.15,.29,,,	after shed
-.04,,,.14,,	after sheet
,.1,,,,	after shim
.15,,,,,	after shot
-.07,,,,,	after should
-.11,,.23,-.09,,	after site
.09,,,,,	after smell
-.16,.31,,,,	after snap
-.25,.35,,-.06,,	after some
.08,,,,,	after somebody
.09,,,,,	after sort
.13,,,,,	after sound
,,.18,-.1,,	after spare
.05,,,,,	after spray
.09,,,,,	after squeak
,,,.06,,	after stack
-.06,.04,,,,	after stain
,,.11,,,	after stairs
.09,,,,,	after start
.14,,,,,	after steps
,,.04,,,	after stop
-.04,,,,.22,	after store
.14,,,,,	after street
.05,,,,,	after study
.06,,,,,	after tacky
.12,,,,,	after tap
-.23,,,.31,,	after tell
.1,,,,,	after template
.2,,,,,	after than
,,,.05,,	after the kid
.17,,,,,	after the kids
-.11,,,,,.2	after the yard
,,.06,,,	after their
.05,,,,,	after they're
,.06,,,,	after thick
.25,,,-.1,,	after thing
.06,,,,,	after think
.05,,,,,	after this
.09,,,,,	after til
-.04,.12,,,,	after tile guy
.06,,,,,	after time
.31,-.25,,,,	after too high
.17,,,,,	after too short
.08,,,,,	after touch
-.24,-.33,.3,,,	after trailer
-.16,.27,,,,	after trim
.05,,,,,	after underneath
.08,,,,,	after until
-.07,,,.25,,	after use
,.06,,,,	after used far imperative
,.09,,,,	after used far owed
,,,.24,,	after used here comma
-.06,,,.27,,	after used here copula
-.08,-.19,,.24,,	after used here none
-.1,,,.09,,	after used here start
,,,.07,,	after used here stop
-.07,,,.19,,	after used sentence none
,.22,,,,	after used sentence word
-.16,,.31,-.07,,	after van
.13,,,,,	after wait
.16,,,,,	after wet
,,,,.12,	after while
-.13,.14,,,,	after white
-.14,,,,,.08	after width
,,,.09,,	after wire
.09,,,,,	after won't
.06,,,,,	after work
.07,,,,,	after yet
-.15,,.14,.1,,	again bought
.16,-.21,,,,	again need
-.05,,,,,	again returned
,,.32,,,	again used
.22,,,,,	ahead #
-.27,.3,,,,	ahead &
-.08,,,,,	ahead +
.16,,,,,	ahead @
,.17,,,,	ahead across
-.06,,,.18,,	ahead again
.1,,,,,	ahead air
-.04,,.06,,,	ahead already
-.06,,,,,	ahead an
.05,,,,,	ahead anybody
.04,,,,,	ahead ap
.11,,,,,	ahead around
-.17,.15,,,,	ahead arrive
.12,,,,,	ahead as
.1,,,,,	ahead b
.06,,,,,	ahead baby
.06,,,,,	ahead bad
-.08,,,.12,,	ahead bag
,,,.06,,	ahead bar
.22,,,,,	ahead bed
.12,,,,,	ahead bend
.21,,,,,	ahead between
,.2,,,,	ahead bin
-.07,.09,,,,	ahead board
,.18,,,,	ahead bond
-.09,,.19,,,	ahead book
.17,,,,,	ahead both
.12,,,,,	ahead bottom
-.05,.09,,,,	ahead break
,.13,,,,	ahead bring
,,,.29,,	ahead burn
-.14,,,.22,,	ahead cap
.21,,,,,	ahead care
,,,.15,,	ahead change
,.08,,,,	ahead chuck
.07,,,,,	ahead clamp
.14,,,,,	ahead client
.13,,,,,	ahead closet
.21,-.07,,,,	ahead code
.15,,,,,	ahead cold side's
-.12,.25,,-.05,,	ahead confirmats
,.11,,-.13,,	ahead could
.06,,,,,	ahead counter
,.1,,,,	ahead crosses
,-.14,,,.15,	ahead crown
.12,,,,,	ahead crush
.09,,,,,	ahead dad
.06,,,,,	ahead dead
.15,,,,,	ahead deep
,.19,,,,	ahead den
.12,,,,,	ahead dig
.11,,,,,	ahead ding
,.05,,,,	ahead dip
.13,,,,,	ahead drain
.08,,,,,	ahead drill
.05,,,,,	ahead drip
.05,,,,,	ahead drop
,.14,,,,	ahead dry
.33,-.05,,,,	ahead each
.04,,,,,	ahead ease
,-.06,,.32,,	ahead eat
.08,,,,,	ahead edge
.07,,,,,	ahead eggshell
.16,,,,,	ahead either
.09,,,,,	ahead em
.15,,,,,	ahead empty
-.1,-.05,.26,,,	ahead enough
.08,,,,,	ahead ensuite
,,,.13,,	ahead even
-.08,,,.22,,	ahead everything
.05,,,,,	ahead exterior
,.1,,-.04,,	ahead falta
,.25,,,,	ahead figure
.08,,,,,	ahead finally
-.06,,,.2,,	ahead fit
,.09,,,,	ahead fix
.11,,,,,	ahead flash
,.05,,,,	ahead flat
,,,.06,,	ahead float
.1,,,,,	ahead floor
,,,.23,,	ahead foam
.12,,,,,	ahead footings
,.1,,,,	ahead forget
,,.18,-.04,,	ahead fre
,,.09,,,	ahead fresh
,,,.09,,	ahead front
.11,,,,,	ahead front room
.07,,,,,	ahead give
.06,,,,,	ahead good
-.1,.21,,,,	ahead guess
-.09,,.23,,,	ahead half
,,.07,,,	ahead hand
-.08,.23,,,,	ahead haven't
.13,,,,,	ahead height
.11,,,,,	ahead height's
,,.13,,,	ahead here
-.12,,.11,,,	ahead him
.06,,,,,	ahead hole
,,,.07,,	ahead hook
,.17,,,,	ahead i'd
,,.11,,,	ahead i've
,-.04,,.22,,	ahead job
.04,,,,,	ahead kids
-.05,,,,,	ahead kit
,,,.04,,	ahead lag
.11,,,,,	ahead land
.12,,,,,	ahead latch
.12,,,,,	ahead laundry
.19,,,,,	ahead let go
.09,,,,,	ahead line
.15,,,,,	ahead living room
.06,,,,,	ahead lose
.06,,,,,	ahead lot
.06,,,,,	ahead lower
.12,,,,,	ahead main
,,,.05,,	ahead master bath
-.1,,.23,,,	ahead maybe
,.07,,,,	ahead me
.05,,,,,	ahead mind
-.11,,,.19,,	ahead mix
.17,,,,,	ahead moisture's
,,,.17,,	ahead mount
.11,,,,,	ahead near
,.17,,,,	ahead need
,.07,,,,	ahead new
.06,,,,,	ahead nick
.07,,,,,	ahead old
.13,,,,,	ahead one's
.07,,,,,	ahead ones
.12,,,,,	ahead opened up
.08,,,,,	ahead opening's
-.06,.23,,,,	ahead order
,,.17,,,	ahead other
.15,,,,,	ahead out of plumb
.14,,,,,	ahead outside
-.04,.08,,,,	ahead owe
.08,,,,,	ahead patch
.09,,,,,	ahead peel
,,,,.06,	ahead pick
,,.18,-.05,,	ahead pile
,,,.11,,	ahead pipe
.15,,,,,	ahead pitch
,,,.05,,	ahead place
.09,,,,,	ahead plan
.04,,,,,	ahead plane
-.05,,,,,	ahead please
-.1,,.14,,,	ahead plus
.05,,,,,	ahead pool
,,,.12,,	ahead pour
.06,,,,,	ahead push
.14,,,,,	ahead quick
.05,,,,,	ahead quit
,,,,,.09	ahead rain
.09,,,,,	ahead read
.05,,,,,	ahead remind
,,,.14,,	ahead replace
-.15,,.17,,,	ahead rest
-.12,,,,,.28	ahead return
,.13,,-.09,,	ahead rotten
.15,,,,,	ahead row
.18,,,,,	ahead run's
,,,.06,,	ahead salon
.11,,,,,	ahead scrape
,,.06,,,	ahead scratch
.05,,,,,	ahead she's
,,,.14,,	ahead shed
.06,,,,,	ahead sheet
,,,-.05,,	ahead ship
.07,,,,,	ahead shop
,.31,,,,	ahead short
.09,,,,,	ahead shut
-.34,.39,-.06,,,	ahead shy
-.09,,.12,,,	ahead sign
.12,,,,,	ahead size
.12,,,,,	ahead snake
.16,,,,,	ahead snap
.18,,,,,	ahead snug
-.05,,,.14,,	ahead solid
.07,,,,,	ahead some
.26,-.07,,,,	ahead sound
.21,,,,,	ahead splash
.13,,,,,	ahead splice
.06,,,,,	ahead spot
.06,,,,,	ahead spray
-.2,-.18,.06,.26,,	ahead stack
-.07,,,.15,,	ahead stagger
.14,,,,,	ahead stain
-.16,,,.26,,	ahead stairs
.07,,,,,	ahead static
,,.06,,,	ahead strip
-.1,,,,,	ahead supplier
,,,.07,,	ahead swap
,.17,,,,	ahead swing
.08,,,,,	ahead system
.12,,,,,	ahead tall
.17,,,,,	ahead tap
.11,,,,,	ahead temp
.05,,,,,	ahead test
-.1,,.07,,,	ahead the lady
.11,,,,,	ahead then
.08,,,,,	ahead they
.14,,,,,	ahead they're
,,,,,.07	ahead they've
.12,,,,,	ahead thing
,,,.22,,	ahead through
.13,,,,,	ahead tie
-.04,.13,,,,	ahead tile guy
.05,,,,,	ahead time
.13,,,,,	ahead together
.1,,,,,	ahead toward
.08,,,,,	ahead trim
.09,,,,,	ahead truck
,,.09,,,	ahead try
,,,.05,,	ahead turn
,.14,,,,	ahead us
,,,.18,,	ahead use
,,,.06,,	ahead vent
,,,,.13,	ahead walk
.06,,,,,	ahead wall's
.05,,,,,	ahead walls
,.15,,,,	ahead we'll
.29,,,,,	ahead were
.05,,,,,	ahead why
.15,,,,,	ahead wide
,.19,,,,	ahead will
.22,,,,,	ahead wire
-.22,.16,.07,,,	ahead without
.05,,,,,	ahead work
,,.06,,,	ahead wrap
.04,,,,,	ahead you
2.46,-.89,-1.56,-.94,-2.87,-3.14	any
,,,.1,,	area after none sentence
,,,.26,,	area beside nothing
-.06,.08,,,,	area cue need
,,,.09,,	area cue used
.07,,,,,	area flawed
-.32,,-.1,.43,,	area left #
-.1,,,.23,,	area null none no
-.25,.09,,.17,,	area right #
-.1,,,.23,,	area says none no
,,,.09,,	area says past behind
,,,.08,,	area sold so false
-.1,,,.23,,	area verb null no
.13,,,,,	bare after bought sentence
-.07,,,.15,,	bare beside bag
-.07,,,.15,,	bare beside bolt
-.07,.15,,,,	bare beside break
.24,-.08,,,,	bare beside buy
.21,-.08,,,,	bare beside buy b other
-.1,,,.17,,	bare beside cap
.06,,,,,	bare beside eat
.1,,,,,	bare beside fre
.12,,,,,	bare beside guess
.09,,,,,	bare beside hang
.13,,,,,	bare beside have b nobody
.08,,,,,	bare beside have b person
.17,,,,,	bare beside lay
.07,,,,,	bare beside measure pp person
.12,,,,,	bare beside move p other
.07,,,,,	bare beside move pp nobody
,.09,,,,	bare beside need s nobody
.16,,,,,	bare beside need s other
,.13,,,,	bare beside order
.08,,,,,	bare beside pick
.06,,,,,	bare beside pop
.09,,,,,	bare beside say b person
.05,,,,,	bare beside screw
,,,.08,,	bare beside seal
.06,,,,,	bare beside send
.12,,,,,	bare beside set
.11,,,,,	bare beside swap
.05,,,,,	bare beside tape
.21,,,,,	bare beside throw
.21,,,-.07,,	bare beside use
.21,,,-.16,,	bare beside use pp person
.08,,,,,	bare beside walk
.23,,,,,	bare beside work bpp nobody
.12,,,,,	bare beside work p nobody
.05,,,,,	bare beside wrap
.31,-.08,,,,	bare buy past behind
-.09,.13,,,,	bare left &
.06,,,,,	bare left -
.13,,,,,	bare left Q
.24,-.08,,,,	bare left buy
.06,,,,,	bare left do
,,,.06,,	bare left every
.06,,,,,	bare left glue
.05,,,,,	bare left hang
,.11,,,,	bare left me
.13,,,,,	bare left miss
.1,,,,,	bare left need
.14,,,,,	bare left only
,.06,,,,	bare left order
.06,,,,,	bare left send
.07,,,,,	bare left set
.2,,,,,	bare left swap
.08,,,,,	bare left the
.07,,,,,	bare left there's
.25,,,-.19,,	bare left use
-.06,.14,,,,	bare list need
.07,,,,,	bare move past behind
.06,,,,,	bare named here role
.09,,,,,	bare nameless
,.06,,,,	bare need past before
.12,,,,,	bare need present behind
.05,,,,,	bare other modal before
.13,,,,,	bare right (
.25,,,,,	bare right /
.1,,,,,	bare right @
.06,,,,,	bare right back
.05,,,,,	bare right bring
.16,,,,,	bare right change
.09,,,,,	bare right cup
.08,,,,,	bare right cut
.05,,,,,	bare right down
.08,,,,,	bare right fit
.32,,,-.15,,	bare right glue
.05,,,,,	bare right just
.09,,,,,	bare right my
-.04,,,.13,,	bare right never
,.05,,,,	bare right next
-.11,.17,,,,	bare right peel
.14,,,,,	bare right replace
.22,,,,,	bare right short
.06,,,,,	bare right so
.07,,,,,	bare right stay
.12,,,,,	bare right were
.07,,,,,	bare say past before
,,,.07,,	bare see modal behind
-.1,,,,.36,	bare then buy b
.06,,,,,	bare then measure i
.06,,,,,	bare then move pp
.05,,,,,	bare then work bpp
,,.07,,,	bare use past behind
.1,,,,,	bare verb arrive before
.06,,,,,	bare verb can behind
.16,,,,,	bare verb cap behind
-.13,.07,,,,	bare verb crack before
.07,,,,,	bare verb dry before
.07,,,,,	bare verb dump before
.06,,,,,	bare verb fit before
.1,,,,,	bare verb fre behind
.22,,,,,	bare verb glue before
.19,,,,,	bare verb grab behind
.13,,,,,	bare verb guess behind
.15,,,,,	bare verb hang behind
,,.05,,,	bare verb know behind
.23,,,,,	bare verb lay behind
.05,,,,,	bare verb miss before
.06,,,,,	bare verb move before
,.15,,,,	bare verb order behind
.1,,,,,	bare verb pick behind
.05,,,,,	bare verb remind behind
.11,,,,,	bare verb replace before
.11,,,,,	bare verb screw behind
,,,.12,,	bare verb seal behind
.05,,,,,	bare verb send before
.05,,,,,	bare verb send behind
.18,,,,,	bare verb set behind
-.18,,,.24,,	bare verb sister behind
.07,,,,,	bare verb stop behind
.11,,,,,	bare verb swap behind
,,,,,.06	bare verb take behind
.12,,,,,	bare verb throw behind
.08,,,,,	beside are Q
,,,.04,,	beside are in
,,,.11,,	beside are on
-.17,.15,,,,	beside arrive
-.08,,,.12,,	beside bag
-.13,,,.15,,	beside bag b other
.08,,,,,	beside be G
.18,,,,,	beside be Q
-.12,.05,.09,,,	beside be a
,.06,,,,	beside be b person
.15,,,,,	beside bend
.17,,,,,	beside blow
-.05,,,.13,,	beside bolt
-.08,,,.16,,	beside bolt pp other
-.07,.11,,,,	beside break
,.13,,,,	beside bring
-.06,.21,,,,	beside bring Q
-.06,.18,,,,	beside bring a
,.13,,,,	beside bring b nobody
-.12,.28,,,,	beside bring b other
,.05,,,,	beside bring b person
-.3,.36,,,,	beside bring me
.05,-.06,,,,	beside bring the
-.22,,,.41,,	beside burn
-.32,,,.42,,	beside burn pp person
-.08,,,.23,,	beside burn through
-.09,,,,,	beside buy
-.16,.35,,,,	beside buy Q
-.39,,-.05,-.16,.24,.18	beside buy a
,.37,,,,	beside buy b nobody
.07,,,,,	beside buy b other
,.16,,,,	beside buy b person
-.29,-.31,,-.12,.54,	beside buy pp nobody
-.19,-.25,,,.45,	beside buy pp person
.06,,,,,	beside call
,.05,,,,	beside call it
,-.06,,.15,,	beside can will other
-.27,,,.31,,	beside cap
,,,.2,,	beside change
.05,,,,,	beside change Q
-.23,,,.23,,	beside change b person
-.15,,,.24,,	beside change the
,.05,,,,	beside clean b other
,-.14,,,.19,	beside come T
.1,,,,,	beside come bp other
,-.08,,,.14,	beside come s other
.22,,,,,	beside come up
.04,,,,,	beside come with
.2,,,,,	beside cover
.06,,,,,	beside crack pp other
.12,,,,,	beside crush
.12,,,,,	beside crush pp other
.1,,,,,	beside cut a
.13,,,,,	beside cut bpp person
.15,,,,,	beside dig
.1,,,,,	beside ding
.07,,,,,	beside ding pp person
.07,,,,,	beside ding the
,,,,.08,	beside do b other
.07,,,,,	beside do p other
,,,,.1,	beside do the
.1,,,,,	beside drill
.12,,,,,	beside drill Q
.05,,,,,	beside drip
.06,,,,,	beside drip i other
.08,,,,,	beside drip on
,,,.09,,	beside dump i other
,-.08,,.34,,	beside eat
-.3,-.23,-.05,.45,,	beside eat Q
.14,,,,,	beside eat i other
-.34,-.21,,.48,,	beside eat p other
.06,,,,,	beside feel b person
,.25,,-.05,,	beside figure
-.05,.28,,-.07,,	beside figure Q
.12,,,,,	beside find a
-.06,,,.2,,	beside fit
-.14,.18,,,,	beside fix
.17,,,,,	beside flush
-.07,.15,,,,	beside forget
.09,,,,,	beside frame
.09,,,,,	beside frame pp other
.1,,,,,	beside fre
-.06,,.26,,,	beside get Q
,.39,,,,	beside get b nobody
,.09,,,,	beside get b other
-.25,,.28,,,	beside get maybe
,.25,,,,	beside get me
-.24,.28,,,,	beside get no
,-.16,.38,,,	beside get p nobody
,,.23,,,	beside get p person
-.07,.15,,,,	beside get s person
.15,,,,,	beside get that
.07,,,,,	beside get the
.21,,,,,	beside give
-.07,-.05,,.29,,	beside go Q
.16,,,,,	beside go b other
.06,,,,,	beside go down
-.04,,,.33,,	beside go p nobody
,,,.17,,	beside go p other
,,,.21,,	beside go p person
-.16,,,.49,,	beside go through
-.05,.09,,,,	beside grab
-.28,,,-.06,.29,	beside grab Q
-.14,.27,,,,	beside grab a
,.12,,,,	beside grab b nobody
,.13,,,,	beside guess
-.24,,,.33,,	beside hang Q
,.11,,,,	beside hang b other
,,,.04,,	beside hang i other
-.13,.09,,,,	beside hang on
,,,.06,,	beside hang pp other
-.14,,,.24,,	beside hang pp person
,,.09,,,	beside has a
,,.05,,,	beside has has person
,,.27,,,	beside have Q
.08,,,,,	beside have a
,,.38,,,	beside have b nobody
,,.49,,,	beside have b person
.23,,,,,	beside have pp other
,,,.07,,	beside have pp person
.14,,,,,	beside hit a
.1,,,,,	beside hold Q
,,.13,,,	beside is a
.07,,,,,	beside is already
.09,,,,,	beside is on
.05,,,,,	beside kill
.05,,,,,	beside land
-.04,,,.15,,	beside lay
.13,,,,,	beside lay i other
-.15,,,.25,,	beside lay pp person
.07,,,,,	beside leave G
-.42,-.06,.58,-.12,,	beside leave Q
.07,,,,,	beside leave a
,.05,,,,	beside leave i nobody
.1,,,,,	beside leave of
.11,,,,,	beside leave on
,,.08,,,	beside leave pp nobody
,,.12,,,	beside leave pp person
-.09,,.12,,,	beside leave s other
.21,,,,,	beside like a
.06,,,,,	beside lose
.07,,,,,	beside make Q
-.05,.12,,,,	beside make b nobody
.21,,,,,	beside make pp person
.1,,,,,	beside measure bp other
.08,,,,,	beside measure i other
-.07,,,.05,,	beside measure pp person
-.09,.28,,,,	beside miss Q
.12,,,,,	beside miss the
-.15,,,.22,,	beside mix
-.08,,,.2,,	beside mount
.13,,,,,	beside move Q
.15,,,,,	beside move b other
-.08,,.17,,,	beside move i person
-.04,,,.33,,	beside move p nobody
,,,.17,,	beside move p other
,,,.21,,	beside move p person
,,.05,,,	beside move pp person
,,.04,,,	beside move the
.17,,,,,	beside nail pp nobody
,.19,,,,	beside need
,.12,,,,	beside need Q
-.12,.27,,,,	beside need a
-.28,.3,,,,	beside need an
,.06,,,,	beside need another
,.28,,,,	beside need b nobody
,.18,,,,	beside need b other
,.2,,,,	beside need b person
,.14,,,,	beside need more
.2,,,,,	beside need pp person
,-.26,.19,,,	beside need the
.06,,,,,	beside nick
-.06,.21,,,,	beside order
.06,-.27,,,.18,	beside order G
-.12,.28,,,,	beside order Q
-.06,.2,,,,	beside order b nobody
,.11,,,,	beside order b person
,-.1,,,.19,	beside order pp person
,.13,,,,	beside order the
,.28,,,,	beside other b nobody
,-.09,.2,,,.05	beside other p nobody
,,.13,,,	beside other p person
-.46,-.12,,-.19,.46,.05	beside other pp nobody
.11,,,,,	beside other s nobody
-.14,.16,,,.09,	beside owe
-.05,,,,.12,	beside owe b person
,,,.05,,	beside pack pp person
.11,,,,,	beside patch
.11,,,,,	beside peel
,,,,.07,	beside pick
,.18,,,,	beside pick b nobody
.13,,,,,	beside pick i person
-.28,-.18,-.06,-.13,.42,	beside pick pp nobody
,,,,.12,	beside pick pp person
,,,-.05,.24,	beside pick up
-.04,,,.12,,	beside place
.04,,,,,	beside plane
.11,,,,,	beside pop
-.1,,,.16,,	beside pour
.05,,,,,	beside prime b person
,,,.1,,	beside pull Q
.05,,,,,	beside pull the
,,,.1,,	beside put
-.14,,,,,	beside put G
-.06,,,.04,,	beside put a
-.1,,,.25,,	beside put bpp nobody
,,,.08,,	beside put bpp person
,.13,,-.06,,	beside put i person
,,,.23,,	beside put in
-.2,,,.26,,	beside put on
.05,,,,,	beside quit
.05,,,,,	beside quit bpp other
.09,,,,,	beside read
.09,,,,,	beside read Q
,,,.14,,	beside replace
-.2,,,.27,,	beside replace pp nobody
-.12,,,.19,,	beside replace the
-.17,-.05,,,,.3	beside return
-.06,,.06,,,	beside rip b person
.05,,,,,	beside roll
.1,,,,,	beside roll b person
-.13,,,.36,,	beside run Q
,.08,,,,	beside run a
,.1,,,,	beside run bp nobody
.13,,,,,	beside run i other
.06,,,,,	beside run out
,-.06,,.29,,	beside run p nobody
.18,,,,,	beside run the
,.06,,,,	beside say b nobody
.14,,,,,	beside say i person
.1,,,,,	beside say pp other
.1,,,,,	beside say pp person
.09,,,,,	beside scrape
,,.06,,,	beside scratch
-.08,,,.13,,	beside screw
-.12,,,.17,,	beside screw pp nobody
,,,.08,,	beside see b other
-.08,,,,,	beside send
-.4,.15,,,,.21	beside send Q
-.11,,.05,,,.07	beside send pp other
,,,.06,,	beside set
-.05,-.06,,.19,,	beside set Q
,,,.14,,	beside set a
,,,.15,,	beside set bpp person
.18,,,-.07,,	beside set the
.16,,,,,	beside shim
.19,,,-.06,,	beside shim pp person
.12,,,,,	beside shut
-.1,,.18,,,	beside sign
.11,,,,,	beside sign pp person
.12,,,-.04,,	beside sister Q
-.08,,,.21,,	beside sister pp person
.04,,,,,	beside sit in
.08,,,,,	beside skim pp nobody
.14,,,,,	beside snake
.15,,,,,	beside snap
.07,,,,,	beside spray
,,.09,,,	beside strip
-.06,,,.2,,	beside swap
-.12,,,.22,,	beside swap pp person
,,,.05,,	beside swap the
-.05,.19,,-.07,,	beside swing
-.1,.21,,-.11,,	beside swing b person
-.26,,,.17,,	beside take Q
,-.07,,,,	beside take b nobody
,,,.06,,	beside take b person
,-.12,-.06,.13,,	beside take me
-.34,,-.07,-.18,,.41	beside take p nobody
,-.1,,.3,,	beside take p other
,,.13,-.15,,	beside take p person
,,,,,.21	beside take the
.06,,,,,	beside tear p other
-.05,.14,,,,	beside tell b nobody
.05,,,,,	beside test
,,.1,,,	beside think
,,.16,,,	beside think b person
,.12,,,,	beside throw b nobody
.14,,,,,	beside tie
.13,,,,,	beside tile
-.07,,.11,,,	beside try
-.3,,.19,,,	beside try b nobody
,,,.13,,	beside turn
,,.05,,,	beside undefined has person
,,,.23,,	beside use
,,,.2,,	beside use Q
-.31,,,.32,,	beside use a
-.08,.07,,,,	beside use b person
,,,.24,,	beside use pp nobody
,,,.32,,	beside use pp person
,,,,.14,	beside walk
,.14,,,,	beside want Q
,.07,,,,	beside want a
.23,-.15,,,,	beside want another
.31,-.15,,,,	beside want b nobody
.22,,,,,	beside want b other
,.32,,,,	beside want b person
.16,,,,,	beside want it
.2,,,,,	beside want pp person
,.04,,,,	beside want s nobody
.07,,,,,	beside want the
.22,,,,,	beside were
.23,,,,,	beside were is other
,.1,,,,	beside work bp nobody
,,,.13,,	beside work bpp nobody
,,,.28,,	beside work p nobody
.07,,,,,	beside work p other
.06,,,,,	beside work s person
,,.08,,,	beside wrap
,,.14,,,	bound about
.16,,,,,	bound atMost
.19,,,,,	bound over
-.47,,,.34,,	code
-.08,,,,,.09	count after bought far
-.3,-.12,.07,.11,.14,	count after bought sentence
-.19,.07,.13,-.09,,	count after have here
-.19,.32,,,,	count after have sentence
,.33,,,,	count after need here
-.4,.49,,,,	count after need sentence
-.22,.06,,,,	count after used far
,-.07,,.15,,	count after used here
-.36,,.05,,,	count after used sentence
-.2,,,.34,,	count beside are
.05,,,,,	count beside be
-.16,.09,,,,	count beside bring
-.1,.13,,,,	count beside buy
,.12,,,,	count beside buy b nobody
.28,,,,,	count beside call
-.22,-.11,,.34,,	count beside change
-.05,,,.2,,	count beside come
.16,,,,,	count beside do
-.05,.07,,,,	count beside get
,,,.13,,	count beside go
-.07,,,,.14,	count beside grab
-.53,,,.47,,	count beside hang
,,-.12,.09,,	count beside has
,,.23,,,	count beside have
-.17,-.06,.31,,,	count beside have b nobody
.07,,,,,	count beside have b other
-.26,,.46,,,	count beside have b person
.23,,-.13,,,	count beside have pp other
-.32,,,.28,,	count beside have pp person
-.12,,,,,.09	count beside hold
-.33,-.08,.44,-.17,,	count beside leave
-.19,,,.27,,	count beside measure p other
,,,,,.07	count beside measure s other
,.18,,,,	count beside miss
-.13,,,.22,,	count beside mount
-.12,-.05,,.2,,	count beside move p other
-.09,.3,,,,	count beside need
,.26,,,,	count beside need b nobody
-.05,.15,,,,	count beside need b other
-.13,.36,,,,	count beside need b person
.07,-.07,,,,	count beside need s other
-.06,,,,,	count beside nothing
-.24,.54,,,,	count beside other b nobody
,.11,,,,	count beside other b other
,.14,,,,	count beside other b person
.13,,,,,	count beside other i other
-.14,-.25,.21,-.14,,.21	count beside other p nobody
,,,.04,,	count beside other p other
,-.07,.07,,,	count beside other p person
,-.1,,-.12,,.2	count beside other pp person
-.12,.31,,,,	count beside pick
.23,,,,,	count beside pull
-.12,,,.28,,	count beside put
.14,,,,,	count beside read
-.12,-.08,,.24,,	count beside replace
,,,.21,,	count beside run
.23,,,,,	count beside say b other
.15,,,,,	count beside say pp person
-.41,.12,,,,.21	count beside send
,,,.07,,	count beside set
,,,-.1,,	count beside sister
-.12,-.2,-.09,.05,,.28	count beside take
,,-.12,.09,,	count beside undefined has other
-.05,,,.17,,	count beside use
-.06,,,.27,,	count beside use pp nobody
-.07,,,.22,,	count beside use pp person
-.07,.05,,,,	count beside work b nobody
,.06,,,,	count beside work b other
-.11,.09,,,,	count beside work b person
-.12,-.13,,.32,,	count beside work bpp nobody
,,,.12,,	count beside work bpp other
.1,,,,,	count beside work bpp person
-.1,,,.21,,	count beside work p nobody
-.09,,,.3,,	count beside work pp nobody
,,,.11,,	count beside work pp person
,.12,,,,	count buy imperative behind
-.22,-.1,,,.4,	count buy past behind
-.04,,,,,.39	count cue back
-.09,-.23,-.08,,.31,	count cue bought
-.1,,.6,,,	count cue have
-.05,.49,,,,	count cue need
-.21,,,.33,,	count cue used
.24,,,,,	count have present before
-.2,,.33,,,	count have present behind
-.3,,.43,,,	count kept
-.26,,,.1,,	count left #
-.4,.14,,.17,,.06	count left (
-.27,.15,,.11,,	count left +
.09,,,,,	count left G
.2,,,,,	count left N
,,.14,,,	count left T
,,.2,-.13,,	count left about
,,,.19,,	count left all
-.36,.18,,,,	count left and
.37,,,,,	count left at
.15,,,,,	count left be
,.05,,,,	count left bring
-.22,.3,,,,	count left buy
.15,,,,,	count left for
-.12,,.14,,,	count left get
,,,.06,,	count left go
-.38,,,.41,,	count left hang
,,.11,,,	count left have
,,,.18,,	count left in
.11,,,,,	count left is
,.08,,,,	count left it's
.08,,,,,	count left last
-.28,,.37,-.07,,	count left maybe
,.21,,,,	count left me
,.22,,,,	count left miss
-.07,.3,,,,	count left need
.25,-.05,,,,	count left of
,,,.12,,	count left on
-.08,-.1,.24,-.09,,	count left only
-.37,.33,,,,	count left order
.09,,,,,	count left over
.27,,,-.04,,	count left pull
.14,,,,,	count left read
,,,.08,,	count left run
.12,,,,,	count left say
-.42,.51,,,,	count left short
-.31,.12,,.13,,.06	count left that's
-.16,,.17,,,	count left the
.05,,,,,	count left then
-.05,,.27,,,	count left there's
.26,-.1,,,,	count left those
,,,.05,,	count left through
-.09,,.32,,,	count left to
-.46,.09,,.28,,	count left up
-.41,,,.22,,	count left use
-.1,,,,,	count left with
-.36,.42,,-.19,,	count list need
.06,,,,,	count measure present behind
-.19,.17,,,,	count more
-.17,,.46,,,	count move past before
-.33,,.26,,,	count move past behind
-.14,,,,,	count name flawed
.1,,,,,	count named before area
,,,.08,,	count named before fixture
.16,,,,,	count named before surface
,.06,,,,	count named before tool
.07,-.12,,,,	count named here defect
-.55,,,.2,,	count named here material
-.9,.06,,.15,,	count named here part
.34,,,,,	count named here surface
-.15,.3,,,,	count named here tool
-.26,,,,,	count named here word
.17,,,,,	count nameless
-.32,.23,,,,	count need modal behind
,.17,,,,	count need owed behind
-.12,.23,,,,	count need present behind
,.31,,,,	count not ahead
-.1,.09,,,,	count null modal behind
-.12,,,,,	count null none no
-.3,.63,,,,	count other imperative behind
,.13,,,,	count other owed behind
.29,,,-.07,,	count other past before
-.11,,,,,.11	count other past behind
,.18,,,,	count other present behind
-.34,,,.27,,	count pointing
-.17,.25,,,,	count right (
-.17,,,.13,,	count right +
.11,-.1,,,,	count right T
.08,,,,,	count right above
,-.08,.14,-.11,,	count right already
-.2,.07,,,,	count right and
.07,,,,,	count right at
,.14,,-.11,,	count right by
-.41,.27,.14,-.12,,	count right can
.1,,,-.11,,.08	count right come
,,,,,.07	count right crack
-.24,.08,,.05,,	count right for
-.08,,,,,	count right from
.08,,,,,	count right get
.15,,,,,	count right has
-.23,,,.29,,	count right in
-.22,,.51,,,	count right leave
,.17,,,,	count right more
-.05,.23,,-.12,,	count right need
.16,,,,,	count right now
-.18,,,.06,,	count right of
-.09,,.18,-.04,,	count right over
-.18,.37,,-.15,,	count right short
,,.17,,,	count right still
,-.05,.19,-.18,,	count right strip
,.12,,-.15,,	count right the
,,,,,.12	count right to
.09,,,,,	count right under
-.28,,,.24,,	count right up
-.23,,,,,.22	count right were
.22,,,,,	count right with
.18,,,,,	count say past behind
,,.16,,,	count say present behind
,.31,,,,	count says imperative behind
-.12,.27,,,,	count says imperative behind not
,.27,,,,	count says modal behind
.31,,,,,	count says modal behind not
-.12,,,,,	count says none no
,.14,,,,	count says owed before
,.05,,,,	count says owed behind
-.06,,,.15,,	count says past before
-.05,,,,,	count says past behind
,.06,,,,	count says present before
-.09,,.16,,,	count says present behind
-.5,.32,,,,	count sized
,.08,,,,	count sold so false
-.1,,,,,	count sold so true
,,,,,.07	count then have b
,,,.05,,	count then have pp
,,,,,.17	count then measure p
.13,,,-.05,,	count then move b
-.19,,.52,,,	count then move pp
,,,.12,,	count then move s
,.1,,,,	count then need b
.39,-.08,,-.1,,	count then other i
,,,,,.07	count then other pp
,.13,,,,	count then other s
.16,,,,,	count then undefined has
-.23,.16,.1,,,	count then undefined will
-.07,,.16,-.07,,	count then work b
-.08,,,.41,,	count then work pp
-.41,.11,,,,.17	count then work s
,,,.25,,	count use past behind
-.26,.18,,,,	count verb bring behind
,.14,,,,	count verb buy behind
,,,.11,,	count verb call behind
-.11,.06,,,,	count verb get behind
.07,,,,,	count verb go behind
-.07,,,,.14,	count verb grab behind
-.38,,,.42,,	count verb hang behind
.24,,,,,	count verb have before
-.14,,.3,,,	count verb have behind
-.12,.25,,-.13,,	count verb i'll behind
-.26,,.49,,,	count verb leave before
-.06,,.28,-.11,,	count verb leave behind
-.14,,.1,,,	count verb move behind
-.05,.23,,-.12,,	count verb need before
-.05,.34,,,,	count verb need behind
-.12,,,,,	count verb null no
-.37,.44,,,,	count verb pick behind
.29,,,,,	count verb pull behind
,,-.13,.13,,	count verb put behind
-.12,-.08,,.24,,	count verb replace behind
-.21,,,.26,,	count verb run behind
-.1,,-.1,,,.21	count verb send behind
,,,-.1,,	count verb sister behind
.3,,,-.15,,	count verb strip before
,-.08,-.05,,,	count verb swap behind
-.19,-.2,-.15,,,.33	count verb take behind
,,,.15,,	count verb use behind
-.19,,,.24,,	count whole clause
.31,-.07,,,,	count work owed behind
-.06,,,.43,,	count work past before
,,,.31,,	count work past behind
-.06,,,.14,,	count work present behind
,,,,.45,	cue bought
-.4,.36,,,,	first N
-.4,.33,,,,	first an
,.1,,,,	first anchor
.05,,,,,	first any
,,,.04,,	first anything
.06,,,,,	first black
.13,,,,,	first block
,,,.16,,	first both
.06,,,,,	first bracket
.07,,,,,	first cap
.12,,,,,	first caulk
.18,,,,,	first cust
.08,,,,,	first drain
.15,,,,,	first drill
.12,,,,,	first drywall
.04,,,,,	first due
-.28,,,,,.22	first eggshell
.15,,,,,	first foam
.06,,,,,	first glue
.08,,,,,	first her
.04,,,,,	first hot
.17,,,,,	first mud
.04,,,,,	first nail
-.31,,,.32,,	first new
-.07,,,.16,,	first oak
.1,,,,,	first our
.04,,,,,	first paint
.06,,,,,	first plate
-.09,,.2,,,	first plenty
.14,,,,,	first prime
.1,,,,,	first screen
.05,,,,,	first seam
.05,,,,,	first second coat
,.11,,,,	first shim
,,,.13,,	first silicone
-.17,.17,,,,	first some
.07,,,,,	first step
.07,,,,,	first strike
.13,,,,,	first temp
.14,,,,,	first those
.07,,,,,	first tile
.12,,,,,	first wall
.23,,,,,	first white
.04,,,,,	first zone
.12,,,,,	group range
.08,,,,,	head abt
-.18,.14,,,,	head acrylic
-.22,,,,,	head adhesive
.1,,,,,	head aff
.11,,,,,	head air
-.17,.13,.1,,,	head anchors
.12,,,,,	head anything
.12,,,,,	head architraves
,,,,,.25	head back
.18,,,,,	head baffles
.04,,,,,	head balusters
-.19,.1,,.12,,	head bar
.04,,,,,	head baseboard
.05,,,,,	head bath fan
.21,-.07,,,,	head batt
,.07,,,,	head batts
,,,.07,,	head bed
-.19,.12,,.13,,	head belt
,,.09,-.11,,	head belts
.1,,,,,	head bench
.2,,,-.05,,	head bit
-.13,,.12,,,	head blade
,,,.11,,	head blinds
-.2,,.07,,,	head blocks
,.17,,,,	head blue tape
-.15,,.04,.17,,	head boards
-.08,.18,,,,	head bolts
,.1,,,,	head bond
-.24,.17,,,,	head bonding primer
.21,,-.04,-.22,,	head boots
.06,,,,,	head bowl
-.09,,,,,	head box
-.1,,,.05,,	head bracket
,,.15,,,	head bracket's
-.09,,-.06,-.12,.17,	head brads
,,.07,,,	head braided lines
-.08,.17,,,,	head brass
-.19,,,,,.2	head breakers
-.32,,.16,.18,,	head brick
.08,,,,,	head brother
-.16,.17,,,,	head bumpers
-.14,,.05,,,	head cabinet screws
,-.15,.23,,,	head cabinets
-.15,,,.24,,	head cable
,,,.05,,	head can lights
-.05,,,,,	head cap
.34,,,-.2,,	head carcasses
.22,,,,,	head carpet
-.05,,.09,,,	head cartridge
.1,,,,,	head ceiling
,,.14,-.07,,	head ceiling tile
.13,,,,,	head chair rail
.04,,,,,	head chimney
.11,,,,,	head circuit
.05,,,,,	head close
.24,,,,,	head coat
,,,.05,,	head coat hooks
.13,,,,,	head code
.28,,,,,	head coil
.06,,,,,	head cold
.19,,,,,	head corners
-.1,,,.14,,	head couplings
.14,,,,,	head cricket
.08,,,,,	head crown's
.1,,,,,	head dead
-.24,.13,,.11,,	head deck screws
.15,,,,,	head deep
,.04,,,,	head dimmer
.04,,,,,	head disposal
.06,,,,,	head door's
,,,.12,,	head downspout
.26,,,,,	head drain
.2,,,,,	head drawers
.06,,,,,	head drill
.11,,,,,	head drop
,,,.09,,	head drywall
-.08,,,.07,,	head drywall's
.04,,,,,	head due
.11,,,,,	head dumpster
-.27,.28,,,,	head eggshell
-.33,.39,,,,	head elbow
-.4,,.05,.21,,	head elbows
.18,,,,,	head electrical
-.22,,.19,,,	head enamel
-.22,.07,,.06,,	head end caps
,-.05,.16,,,	head enough
-.2,,.11,.05,,	head epoxy
.11,,,,,	head except
.08,,,,,	head factory
.05,,,,,	head falls
.21,,,,,	head fan
.13,,,,,	head fascia
,.1,,,,	head fell
.05,,,,,	head fence
-.11,,,,,	head filter
-.17,,,.21,,	head filters
.1,,,,,	head fine
,.26,,,,	head finish nails
,.28,-.09,-.21,,	head fire caulk
.05,,,,,	head flange
,-.17,,.25,,	head flashing tape
-.06,.31,,,,	head flex
.1,,,,,	head flow
-.31,,,,,	head foam
.19,,,,,	head folks
.04,,,,,	head footings
,,.05,,,	head frames
.1,,,,,	head fridge
-.18,.25,,,,	head full
,,.06,,,	head furnace
.1,,,,,	head gas
-.11,.21,,,,	head gasket
.07,,,,,	head gfci
,,.08,,,	head glue's
.04,,,,,	head go
.14,,,,,	head good
,,,.11,,	head gravel's
,,.05,,,	head gray
-.05,,,.14,,	head grid
.13,,,,,	head grout
,,.05,,,	head grout's
,-.2,,.22,,	head gutter
.04,,,,,	head gutters
.08,,,,,	head hair
-.32,,,.39,,	head hall
-.15,,.16,,,	head handles
.11,,,,,	head handrail
.07,,,,,	head hang
,,,.13,,	head hanger
,,,-.08,,	head hangers
-.06,,.18,,,	head hardware
.13,,,,,	head header
.17,,,,,	head heat mat's
.09,,,,,	head heat pump
.15,,,,,	head height's
-.11,-.08,.04,,.11,	head hidden clips
.23,,,,,	head high
,,,,.07,	head hinges
.25,,,,,	head hole
.08,,,,,	head holes
,,.1,,,	head hood
,-.05,,.07,,	head hooks
,,,.06,,	head hot
.04,,,,,	head house
.07,,,,,	head humidity
.14,,,,,	head insp
,,,,.17,	head instead
,-.07,,,.11,	head insulation
.05,,,,,	head jamb
.27,,,,,	head joist
.05,,,,,	head keys
-.23,.11,.11,,,	head kit
.05,,,,,	head kitchen
-.09,.18,,,,	head knife
-.21,,.15,,,	head knobs
,.08,,,,	head ladder
.1,,,,,	head landing
.14,,,,,	head ledger
-.22,.25,,,,	head left hand
.13,,,,,	head leg
.1,,,,,	head level
-.12,,,,,	head lid
.22,,,,,	head light switch
.26,,,,,	head lights
.12,,,,,	head line set
.19,,,,,	head lines
.09,,,,,	head list
.08,,,,,	head lockbox
,,.12,-.08,,	head locks
.26,,,,,	head loose
.09,,,,,	head machine
.18,,,,,	head maglock
.25,,,-.11,,	head marble
-.38,.12,,.23,,	head mastic
.09,,,,,	head mini split
,,,.08,,	head mirror
.05,,,,,	head morning
-.21,.17,,,,	head mortar
-.04,.27,,,,	head mud
.13,,,,,	head must
-.11,,,.07,,	head nm
-.1,,,,,.2	head nosing
.05,,,,,	head nut
.12,,,,,	head only
.06,,,,,	head opening
.22,,,,,	head outlet
,,.18,,,	head outlets
,.16,,,,	head outside
-.06,,,.15,,	head pad
,,,.04,,	head panels
.05,,,,,	head pendant
,.07,,,,	head pickets
-.12,.21,,,,	head pins
.23,,,,,	head pipe's
.17,,,,,	head pipes
.14,-.04,,,,	head plank
.08,,,,,	head plaster
-.22,.18,,,,	head plates
-.14,,,.07,,	head plugs
,-.06,.15,,,	head ply
,.06,,,,	head plywood's
,,,.11,,	head poly
.22,,,,,	head pressure
.07,,,,,	head primed
-.07,,,,,	head primer
.18,,,,,	head print
,,,.04,,	head putty
-.05,,,.22,,	head pvc
.04,,,,,	head quiet
.06,,,,,	head rack
,.05,,,,	head rail
-.09,,,,,	head rails
-.22,,,.23,,	head receptacles
-.14,.24,,,,	head reducer
.07,,,,,	head return
-.16,,,.26,,	head rim
,,,.12,,	head rim joist
-.04,.13,,,,	head ring
.06,,,,,	head rise
.07,,,,,	head riser's
.1,,,,,	head rock
.17,,,,,	head rodding point
-.14,,,,,	head rods
,,,,.07,	head roller
.09,,,,,	head round
.27,,,,,	head run
,,.17,-.11,,	head satin
.07,,,,,	head screen
.09,,,,,	head screwdriver
-.11,,.12,,,	head sealant
-.11,,,-.05,.07,	head sealer
,,,.21,,	head set
-.1,,,.22,,	head shelf pins
,-.13,,.06,,	head shelves
-.16,.05,.06,,,	head shims
,,.13,,,	head shingles
.15,,,,,	head shower walls
.35,,,,,	head sides
,-.05,,,,	head siding
-.04,,,,,	head silicone
.15,,,,,	head sink
.05,,,,,	head skim
-.04,,,.05,,	head skirting's
.06,,,,,	head slider's
.17,,,,,	head slow
.16,,,,,	head smoke
-.05,,,.12,,	head sod
.07,,,,,	head soffit
.23,,,,,	head soffit vents
.13,,,,,	head solid
.11,,,,,	head sorry
-.3,-.05,.17,.09,,	head speakers
.06,,,,,	head splice
.17,,,,,	head square
.26,-.09,,,,	head stack
.18,,,,,	head staple
,,,.04,,	head staples
.12,,,,,	head static
.07,,,,,	head step
.17,,,,,	head still
-.04,,,,,	head stone
.17,-.06,,,,	head stop
.08,,,,,	head store
.11,,,,,	head stove
.1,,,,,	head straight
-.19,,,,,	head strainers
-.22,,.11,,,	head street
.11,,,,,	head string
-.06,,,,,	head structural screws
.09,,,,,	head stud
.16,,,,,	head subfloor
-.12,,,,.19,	head supply line
-.07,,,,,	head sweep
.14,,,,,	head switch
.2,,,,,	head tag
.05,,,,,	head tall
.12,,,,,	head template
,,.06,,,	head thin set
.15,,,,,	head thing
-.06,,,,,	head thinset
.14,,,,,	head third
-.21,,,.29,,	head toggles
-.21,-.15,,-.09,.12,.21	head towel bar
.09,,,,,	head track
.12,,,,,	head tread
-.12,,,.08,,	head treads
.08,,,,,	head tub
.17,,,,,	head tub's
.15,,,,,	head two by ten
,,,.14,,	head uppers
-.17,,,.29,,	head upstairs
.04,,,,,	head vanity top
-.06,.09,,,,	head vapor barrier
,,,.07,,	head vinyl
.12,-.15,,,,	head wall tile
-.06,,,,,	head washer
-.22,.36,,,,	head washers
.15,,,,,	head water
,.09,,,,	head water's
-.43,,.05,.3,,	head wax ring
.07,,,,,	head wc
,.09,,,,	head weatherstrip
,.04,,,,	head well
-.08,-.07,,.22,,	head whip
.12,,,,,	head wide
.09,,,,,	head window's
,,,.21,,	head windows
-.19,.34,,-.12,,	head wood filler
.1,,,,,	head yet
,.06,,,,	joined and modal
.14,,,,,	joined and owed
.04,,,,,	joined comma modal
.05,,,,,	joined run-on none
,,.16,,,	kept
-.26,.22,,-.09,.06,	last cue bought same
,.12,,,,	last cue need same
-.05,.32,,,,	last use buy imperative same
,.1,,,,	last use buy modal same
.13,,,,,	last use buy owed same
,,,,.24,	last use buy past same
,.14,,-.06,,	last use buy present other
,,.14,,,	last use measure imperative same
.27,,,,,	last use move modal same
-.07,,,,,	last use need modal same
,.13,,,,	last use need owed same
.19,,,,,	last use null imperative other
-.05,,.04,,,	last use null modal other
.1,,,,,	last use null owed other
,,,,.07,	last use null owed same
,.21,,,,	last use other owed same
.06,,,,,	last use say owed same
-.17,-.1,.13,-.1,.17,	last use see imperative other
.1,,,,,	last use see owed same
-.15,,,.15,,	last use use past same
.18,,,,,	last use use present other
-.05,,.19,,,	last use use present same
,.09,,,,	last use work owed other
,,,.05,,	last verb add other
.11,,,,,	last verb adjust same
.05,,,,,	last verb ask same
-.18,,,.05,.17,	last verb bolt same
,,.04,,,	last verb burn same
.04,,,,,	last verb buy other
,.13,,,,	last verb buy same
-.3,,,.19,,	last verb buzz same
-.12,.11,,,,	last verb call same
.08,,,,,	last verb can't same
.2,,,,,	last verb caulk other
.06,,,,,	last verb check other
.1,,,,,	last verb close same
-.07,,,,,	last verb count same
-.41,.2,,,,	last verb crack same
.07,,,,,	last verb cut other
,,.12,,,	last verb do other
,,,-.14,,	last verb doesn't same
.15,,,,,	last verb drill same
.18,,,,,	last verb drop same
.06,,,,,	last verb eat same
,.18,,,,	last verb feather same
-.12,,,.18,,	last verb feed same
-.16,.05,.11,,,	last verb figure same
-.21,,.15,,.17,	last verb find other
-.12,.17,,,,	last verb fire same
.06,,,,,	last verb fit other
,.11,,,,	last verb fit same
-.09,,,.17,,	last verb fix same
.31,-.23,,,,	last verb forget same
-.29,.15,,.13,,	last verb frame same
.18,,,,,	last verb fre same
.2,,,,,	last verb glue other
,,,,.08,	last verb grab same
.06,,,,,	last verb grind same
,,,,,.08	last verb hand same
,,,.16,,	last verb hang same
,,.12,,,	last verb hit same
,,,.07,,	last verb hold other
.05,,,,,	last verb hush same
,.09,,,,	last verb install other
,,.05,,,	last verb keep other
,.14,,-.08,,	last verb keep same
-.05,,.09,,,	last verb know same
,-.11,.18,-.07,,	last verb land same
,.06,,,,	last verb lay same
.18,,,,,	last verb leak same
-.05,,,,.14,	last verb look other
,,.05,,,	last verb make other
.33,,,,,	last verb measure same
.18,,,,,	last verb meter same
.18,,,,,	last verb mount other
,,.04,,,	last verb move other
,.08,,,,	last verb nail same
,.25,,,,	last verb need same
.13,,,,,	last verb notch same
.2,-.05,,,,	last verb open same
,.06,,,,	last verb order same
,-.14,,.11,,	last verb pack same
.22,-.14,,,,	last verb paint same
.08,,,,,	last verb pass same
.06,,,,,	last verb patch other
,.16,,,,	last verb pick same
.05,,,,,	last verb plane same
,,.1,-.16,,	last verb pop same
,,.13,-.15,,	last verb prime same
,,,.17,,	last verb pull same
,,,.04,,	last verb put other
.22,,,,,	last verb rack other
-.05,,,,,	last verb read other
,,,.1,,	last verb read same
-.12,.32,,,,	last verb replace other
,-.07,.1,-.15,,	last verb replace same
.1,,,,,	last verb rip same
.07,,,,,	last verb rock same
.07,,,,,	last verb roll other
.18,,,,,	last verb roll same
.06,,,,,	last verb screw same
.22,,,,,	last verb scribe other
,,,.06,,	last verb seal same
-.07,,.13,,,	last verb send other
-.06,,,.05,,	last verb set other
,.16,,,,	last verb show same
.23,,,,,	last verb sister same
-.13,,,,.09,	last verb sit other
.09,,,,,	last verb sit same
.1,,,,,	last verb snake same
,.12,,,,	last verb snug same
,,.1,-.08,,	last verb splice other
-.14,.13,,,,	last verb squeak same
.14,,,,,	last verb start other
,,,.1,,	last verb start same
,.1,,,,	last verb stick other
-.13,,,.19,,	last verb strip other
,.05,,-.08,,	last verb sweat same
.16,,,,,	last verb tear same
-.05,,.12,,,	last verb tell other
.06,,,,,	last verb tell same
-.1,,,.13,,	last verb think other
.07,,,,,	last verb throw other
,.04,,,,	last verb throw same
.17,,,,,	last verb top same
,,,.1,,	last verb trace same
,.15,,,,	last verb trim other
.09,,,,,	last verb trip other
-.12,.19,,,,	last verb trip same
.2,,,,,	last verb try same
,-.08,.15,,,	last verb turn same
-.13,,.07,.08,,	last verb use same
.15,,,,,	last verb vacuum same
.06,,,,,	last verb wait other
,.07,,,,	last verb wait same
-.1,-.07,,,.21,	last verb wanna same
-.12,,.17,,,	last verb want other
.14,,,,,	last verb wire same
.1,,,,,	left # G
.07,,,,,	left # N
,-.07,.22,-.07,,	left # Q
,.14,,-.07,,	left # about
-.19,-.12,,.27,,	left # all
,.14,,,,	left # bring
,.06,,,,	left # buy
.04,,,,,	left # cut
.18,,,,,	left # every
-.16,,.21,,,	left # from
-.16,.27,,,,	left # get
-.1,.11,,,,	left # grab
,,.25,,,	left # have
.16,,,,,	left # in
.13,,,,,	left # just
,,.04,,,	left # leave
,.2,,,,	left # need
.05,,,,,	left # of
,.11,,,,	left # order
-.13,-.12,-.15,-.12,,.33	left # return
-.04,,,,,	left # run
-.36,.46,,,,	left # short
-.13,,,.12,,	left # that's
,-.16,.26,-.06,,	left # the
,,.1,,,	left # there's
-.14,.31,,,,	left # throw
,,,.3,,	left # use
.08,,,,,	left # want
-.15,.26,,,,	left # we're
.16,,,,,	left # with
-.09,.13,,,,	left &
-.1,,,,,	left (
-.1,,,.09,,	left +
.06,,,,,	left -
.05,,,,,	left /
.09,,,,,	left @
-.16,.08,,,,	left G +
,.14,,-.05,,	left G Q
-.27,.22,,,,	left G and
.06,,,,,	left G for
.1,,,,,	left G get
.07,,,,,	left G has
.2,,,,,	left G have
.12,,,,,	left G in
.09,,,,,	left G is
,.06,,,,	left G miss
.15,,,,,	left G of
,.06,,,,	left G with
-.24,.22,,,,	left N and
-.11,,,.16,,	left Q G
.13,,,,,	left Q Q
-.06,.12,,,,	left Q and
.07,,,,,	left Q by
.07,,,,,	left Q from
.25,,,,,	left Q in
.1,,,,,	left Q of
.08,,,,,	left Q off
.1,,,,,	left Q on
.15,,,,,	left Q over
.05,,,,,	left Q then
.06,,,,,	left Q to
.08,,,,,	left Q under
.1,,,,,	left Q where
.1,,,,,	left T at
-.11,.2,,,,	left T with
,,,.22,,	left all
,-.1,.15,,,	left already
,.1,,,,	left and
.05,,,,,	left are
,,,.12,,	left are in
.14,,,,,	left around
.16,,,,,	left as
.09,,,,,	left between
,.11,,,,	left bring
-.26,.31,,,,	left bring me
-.08,,,.23,,	left burn through
-.09,,,,,	left buy
,.13,,,,	left call it
.22,,,,,	left come up
,,,.06,,	left down
-.17,-.04,.4,,,	left down to
.12,,,,,	left drill
.08,,,,,	left drip on
,-.1,,.24,,	left eat
,.26,,-.08,,	left figure
.14,,,,,	left fill
,,.09,,,	left get
-.24,,.21,,,	left get maybe
-.14,.27,,,,	left get me
.06,,,,,	left glue
,,,.17,,	left go
.09,,,,,	left go on
-.33,,,.52,,	left go through
.15,-.1,,,,	left gonna need
-.15,.27,,,,	left gonna want
.09,,,,,	left gotta be
-.27,.14,,,.15,	left grab
-.1,,.17,,,	left half
,,,.04,,	left hang
-.13,.09,,,,	left hang on
,,.06,,,	left have
.08,,,,,	left hold
-.17,,.39,,,	left i get
-.21,,.33,,,	left i have
,.15,,,,	left i need
,,,.07,,	left i pull
,,,.13,,	left i put
-.2,,,.3,,	left i run
-.24,,,.32,,	left i set
-.2,,,.26,,	left i swap
,,,.31,,	left i use
,.19,,,,	left i want
.04,,,,,	left i'll bring
-.1,,.29,,,	left i've get
-.12,.2,,,,	left in with
,.05,,,,	left it need
.05,,,,,	left it on
.21,,,,,	left it to
-.06,.15,,,,	left it want
-.07,,,.26,,	left it with
-.23,.15,,.14,,	left it's get
.12,,,,,	left just
-.23,,,.29,,	left lay
,,.07,,,	left leave
.1,,,,,	left leave of
.11,,,,,	left leave on
.14,,,,,	left living room
.17,,,,,	left loose
.08,,,,,	left lose
.06,,,,,	left make
-.25,,.38,,,	left maybe
,.19,,,,	left me
,.22,,,,	left miss
-.14,-.07,,.3,,	left mix
.05,,,,,	left move
,,,.15,,	left mud and
.11,,,,,	left near
,.18,,,,	left need
-.35,.33,,.05,,	left new
.29,,,-.21,,	left of the
,,.23,,,	left only
-.09,.23,,,,	left order
.04,,,,,	left out at
.05,,,,,	left over
.06,,,,,	left paint
.08,,,,,	left past
,.07,,,,	left pick
-.04,,,-.1,.23,	left pick up
.06,,,,,	left pop
-.06,,,.28,,	left put in
.13,,,,,	left read
,,,.12,,	left replace
-.2,-.08,,-.07,,.31	left return
,,,.04,,	left run
-.16,.1,.06,,,	left sand
.07,,,,,	left scrape
.12,,,,,	left scribe
.05,,,,,	left seal
-.09,,,,,.1	left send
,,,.25,,	left set
-.34,.55,,,,	left short
,,,.04,,	left sister
.05,,,,,	left sit in
,.1,,,,	left still need
-.04,,,.17,,	left swap
-.08,,,.07,,	left take
.04,,,,,	left than
.04,,,,,	left that
-.08,,,.19,,	left that with
-.1,,,.1,,	left that's
-.12,.17,,,,	left the lady want
.17,,,,,	left the last
,,,,.14,	left them
.23,,,,,	left there be
,,.1,,,	left there's
.26,-.1,,,,	left those
,.25,,,,	left those and
,,,.39,,	left through
-.27,.23,,,,	left throw
.11,,,,,	left to be
.1,,,,,	left to move
-.05,,.14,,,	left try
-.11,,,.08,,	left up
-.13,,,.22,,	left up on
.17,,,,,	left up to
-.08,.21,,,,	left us
,,,.27,,	left use
-.05,,.23,,,	left we have
-.06,.22,,,,	left we need
,,,.24,,	left we use
-.15,.26,,,,	left we're
.16,,,,,	left you
-.09,.13,,,,	left1 &
-.1,,,,,	left1 (
-.1,,,.09,,	left1 +
.06,,,,,	left1 -
.05,,,,,	left1 /
.09,,,,,	left1 @
,,,.22,,	left1 all
,-.1,.15,,,	left1 already
,.1,,,,	left1 and
.05,,,,,	left1 are
.14,,,,,	left1 around
.16,,,,,	left1 as
.09,,,,,	left1 between
,.11,,,,	left1 bring
-.09,,,,,	left1 buy
,,,.06,,	left1 down
.12,,,,,	left1 drill
,-.1,,.24,,	left1 eat
,.26,,-.08,,	left1 figure
.14,,,,,	left1 fill
,,.09,,,	left1 get
.06,,,,,	left1 glue
,,,.17,,	left1 go
-.27,.14,,,.15,	left1 grab
-.1,,.17,,,	left1 half
,,,.04,,	left1 hang
,,.06,,,	left1 have
.08,,,,,	left1 hold
.12,,,,,	left1 just
-.23,,,.29,,	left1 lay
,,.07,,,	left1 leave
.14,,,,,	left1 living room
.17,,,,,	left1 loose
.08,,,,,	left1 lose
.06,,,,,	left1 make
-.25,,.38,,,	left1 maybe
,.19,,,,	left1 me
,.22,,,,	left1 miss
-.14,-.07,,.3,,	left1 mix
.05,,,,,	left1 move
.11,,,,,	left1 near
,.18,,,,	left1 need
-.35,.33,,.05,,	left1 new
,,.23,,,	left1 only
-.09,.23,,,,	left1 order
.05,,,,,	left1 over
.06,,,,,	left1 paint
.08,,,,,	left1 past
,.07,,,,	left1 pick
.06,,,,,	left1 pop
.13,,,,,	left1 read
,,,.12,,	left1 replace
-.2,-.08,,-.07,,.31	left1 return
,,,.04,,	left1 run
-.16,.1,.06,,,	left1 sand
.07,,,,,	left1 scrape
.12,,,,,	left1 scribe
.05,,,,,	left1 seal
-.09,,,,,.1	left1 send
,,,.25,,	left1 set
-.34,.55,,,,	left1 short
,,,.04,,	left1 sister
-.04,,,.17,,	left1 swap
.13,,,,,	left1 t fixture.
.14,,,,,	left1 t role.
.09,,,,,	left1 t tool.
-.08,,,.07,,	left1 take
.04,,,,,	left1 than
.04,,,,,	left1 that
-.1,,,.1,,	left1 that's
,,,,.14,	left1 them
,,.1,,,	left1 there's
.26,-.1,,,,	left1 those
,,,.39,,	left1 through
-.27,.23,,,,	left1 throw
-.05,,.14,,,	left1 try
-.11,,,.08,,	left1 up
-.08,.21,,,,	left1 us
,,,.27,,	left1 use
-.25,.23,,,,	left1 v buy.
,,.06,,,	left1 v have.
.06,,,,,	left1 v measure.
,.12,,,,	left1 v need.
-.2,-.08,,-.07,,.31	left1 v return.
,,,.27,,	left1 v use.
-.15,.26,,,,	left1 we're
.16,,,,,	left1 you
-.23,.19,,,,	left2 /
-.11,.13,,,,	left2 a
-.11,,,.18,,	left2 again
.11,,,,,	left2 air
,,.06,,,	left2 all
-.11,,.07,,,.07	left2 already
-.07,,,.15,,	left2 bag
.07,,,,,	left2 bay
.08,,,,,	left2 be
-.07,,,.15,,	left2 bolt
.16,,,,,	left2 bottom
-.09,.21,,,,	left2 bracket
-.23,.05,,,,	left2 bring
,,,.18,,	left2 burn
.1,,,,,	left2 can
.05,,,,,	left2 can't
-.22,,,.28,,	left2 cap
.05,,,,,	left2 ceiling
.06,,,,,	left2 check
,.22,,-.25,,	left2 could
.05,,,,,	left2 crack
.11,,,,,	left2 ding
.06,,,,,	left2 dining room
.2,,,,,	left2 don't
,,.19,,,	left2 down
.1,,,,,	left2 em
.04,,,,,	left2 floor
.11,,,,,	left2 frame
.17,,,,,	left2 from
,,,.06,,	left2 go
.12,,,,,	left2 good
,,,.11,,	left2 hall
,,.1,,,	left2 have
.09,,,,,	left2 here
,,,,,.04	left2 hold
.05,,,,,	left2 homeowner
.09,,,,,	left2 hook
.08,,,,,	left2 house
-.06,.22,,,,	left2 i'd
,.09,,,,	left2 i'm
,,.14,,,	left2 i've
.29,,,,,	left2 in
.18,,,,,	left2 inspector
.06,,,,,	left2 keep
-.09,.06,,,,	left2 lay
.08,,,,,	left2 loose
.04,-.12,,,,.06	left2 lot
,.1,,,,	left2 make
,.04,,,,	left2 mark.
,,,.15,,	left2 mud
,,,.1,,	left2 nail
-.12,.1,,,,	left2 need
,.06,,,,	left2 not
.2,,,,,	left2 nothing
,,,.16,,	left2 now
,,,.13,,	left2 only
,,.13,,,	left2 over
-.28,.21,,-.06,.16,	left2 owe
.12,,,,,	left2 owner
,,,-.04,.21,	left2 pick
.09,,,,,	left2 pull
-.26,-.06,,.49,,	left2 put
.16,,,,,	left2 right
.14,,,,,	left2 rip
.13,,,,,	left2 sand
,.07,,,,	left2 scribe
.19,,,,,	left2 send
.3,-.11,,-.09,,	left2 set
.07,,,,,	left2 sheath
,.21,,,,	left2 short
.13,,,,,	left2 should
,-.09,,.14,,	left2 shy
.11,,,,,	left2 side
.07,,,,,	left2 size
.08,,,,,	left2 splice
.08,,,,,	left2 stairs
,,.13,,,	left2 still
-.14,,,.22,,	left2 swap
.13,,,,,	left2 t fixture.
,,,,,.08	left2 take
,.05,,,,	left2 tape
.09,,,,,	left2 tear
.05,,,,,	left2 tell
-.07,,,,,	left2 that
-.04,.11,,,,	left2 the lady
-.25,-.13,.44,-.14,,	left2 there's
,.09,,,,	left2 those
.15,,,,,	left2 through
.15,,,,,	left2 tile
.15,,,,,	left2 top
.04,,,,,	left2 under
-.26,,,.37,,	left2 use
-.06,.17,,,,	left2 v buy.
,,.1,,,	left2 v have.
-.26,,,.37,,	left2 v use.
.06,,,,,	left2 walk
.08,,,,,	left2 want
.1,,,,,	left2 water
,.13,,,,	left2 we're
.14,,,,,	left2 wide
-.1,.25,,,,	left2 will
.14,,,,,	left2 wire
,,,.21,,	left2 with
.23,,,,,	left2 you
-.05,,,,,	left3 all
-.09,,,.17,,	left3 already
,.05,-.11,.05,,	left3 another
-.04,,,.26,,	left3 are
-.11,,,,,	left3 back
.18,,,,,	left3 before
.27,,,-.18,,	left3 both
-.11,,,.18,,	left3 can't
.1,,,,,	left3 corner
,,,.07,,	left3 down
.14,,,,,	left3 drop
.08,,,,,	left3 dump
.14,,,,,	left3 electrician
.07,,,,,	left3 em
,,,.12,,	left3 end
-.06,,,.15,,	left3 every
.16,,,,,	left3 for
.14,,,,,	left3 hall
.19,,,,,	left3 have
.09,,,,,	left3 his
,,,.13,,	left3 hit
.19,,,,,	left3 i'll
,,.1,,,	left3 i'm
-.08,,,.1,,	left3 i've
.08,,,,,	left3 if
-.07,-.16,.12,,,	left3 just
-.22,,,.22,,	left3 last
,,.05,,,	left3 leave
.1,,,,,	left3 like
.08,,,,,	left3 loose
.14,,,,,	left3 make
,,.14,,,	left3 maybe
.14,,,,,	left3 my
,.12,,,,	left3 need
.07,,,,,	left3 new
.07,,,,,	left3 nobody
,-.04,,.11,,	left3 now
.07,,,,,	left3 off
.18,,,,,	left3 only
.19,,,,,	left3 out
.11,,,,,	left3 pull
.06,,,,,	left3 right
.05,,,,,	left3 run
-.2,.18,,,,	left3 send
.07,,,-.14,,	left3 she
.12,,,,,	left3 she's
.17,,,-.06,,	left3 shim
-.11,.1,,,,	left3 somebody
-.05,,,,.07,	left3 still
.13,,,,,	left3 take
,,,.06,,	left3 that's
.2,,,,,	left3 there's
.22,,,,,	left3 they
.07,,,,,	left3 this
-.08,.15,,,,	left3 too
,,,.14,,	left3 up
.22,,,-.12,,	left3 use
.05,,,,,	left3 want
.16,,,,,	left3 were
.04,,,,,	left3 when
,,,.07,,	left3 with
.06,,,,,	left3 you
-.24,.22,,,,	length after have far
,.22,,,,	length after need here
-.12,.33,,,,	length after need sentence
.36,,,,,	length after none here
,.08,,,,	length after none sentence
-.11,-.06,.29,-.09,,	length after used sentence
-.39,.08,.25,-.09,,	length beside get
.23,,,,,	length beside is
-.06,.2,,,,	length beside need
,.16,,,,	length beside need b nobody
-.21,.32,,,,	length beside need b person
-.08,,,,,	length beside nothing
,.13,,,,	length beside other b nobody
-.09,,,.23,,	length beside run
.28,,,,,	length beside undefined is other
,,.12,,,	length beside work pp other
-.11,,.29,,,	length cue have
-.14,.52,,,,	length cue need
,,,.28,,	length cue used
.12,,,,,	length flawed
-.16,.06,.18,-.15,,	length kept
-.2,.1,,.19,,	length left #
-.05,,,,,	length left about
.05,,,,,	length left in
.19,,,,,	length left is
,.2,,,,	length left need
.18,,,,,	length left over
-.14,,,.14,,	length left up
-.07,,,,,	length name flawed
.21,,,,,	length named before surface
-.66,.38,,,,	length named here material
-.11,.24,,-.07,,	length named here part
-.28,.17,,.15,,	length named here word
-.08,.26,,,,	length need owed behind
-.08,,,,,	length null none no
,.13,,,,	length other imperative behind
-.08,.07,,,,	length other modal behind
-.15,-.11,.3,-.12,,	length other past behind
-.16,-.2,,.21,,	length pointing
.31,-.12,,,,	length right Q
-.33,.34,,,,	length right and
-.16,-.2,,.21,,	length right of
-.07,-.18,,.24,,	length right up
,.15,,,,	length says imperative behind
,.11,,,,	length says modal behind
-.08,,,,,	length says none no
,.18,,,,	length says owed behind
-.17,,,.31,,	length says past behind
,.12,,,,	length says present behind
-.54,.27,,.21,,	length sized
-.17,.2,,,,	length sold so true
-.18,,.32,-.05,,	length then move pp
-.39,.08,.25,-.09,,	length verb get behind
-.18,.32,,,,	length verb need behind
-.08,,,,,	length verb null no
-.08,.22,,,,	length verb want behind
-.19,.35,,,,	length whole clause
-.08,,,.31,,	length work past behind
-.28,-.35,.46,-.3,,	list have
-.24,.56,,-.14,,	list need
.16,,,,,	many
-.29,.48,,,,	marked
-.1,,,,,	meant back 1
.05,-.07,,,,	meant back 5
.26,,,,,	meant back 6
,.05,,,,	meant back 7
.19,,-.05,-.21,,	meant back 8
.16,-.22,,,,	meant before new
-.1,.14,,,,	meant before no
.31,,,,,	meant flawed false
-.38,.45,,,,	meant ran out
-.06,.25,,,,	more
,,,.14,,	named before area
-.13,,.07,,,	named before tool
.22,,,,,	nameless
,.07,,,,	next cue bought other
,,,,,.09	next cue bought same
,.08,,,,	next none same and
.13,,,,,	next none same run-on
,,,.11,,	next past same and
.06,,,,,	next past same stop
.15,,,,,	next present same stop
-.11,.21,,,,	next use buy imperative same
-.14,.26,,,,	next use buy modal same
-.18,.16,,,,	next use buy owed same
.12,,,,,	next use buy past other
,,,,.08,	next use buy past same
.2,,,-.1,,	next use have imperative same
,,,.06,,	next use have present other
.1,,,,,	next use measure imperative same
.06,,,,,	next use move imperative same
.09,,,,,	next use move past other
,.25,,,,	next use move present other
-.07,,.09,,,	next use need past other
-.06,,.05,,,	next use null imperative other
,,.08,,,	next use null imperative same
.04,,,,,	next use null modal other
.15,,,,,	next use null owed same
.08,,,,,	next use say modal other
.13,,,,,	next use say modal same
-.18,,,.19,,	next use say past other
,.16,,,,	next use say present other
,,.09,,,	next use see imperative other
.11,,,,,	next use see imperative same
.15,,,,,	next use see present same
,.05,,,,	next use use modal same
.05,,,,,	next use use present other
.04,,,,,	next use work past other
.24,,,,,	next verb add same
.18,,,,,	next verb ask same
.06,,,,,	next verb blow same
-.39,-.05,,.47,,	next verb bolt same
,,.09,,,	next verb borrow same
,-.13,,,,	next verb bring other
,-.08,.12,,,	next verb buy other
.13,,,,,	next verb cap same
,,,.1,,	next verb change same
,,.05,,,	next verb check other
.11,,,,,	next verb chuck same
.11,,,,,	next verb clamp same
.18,,,,,	next verb clean same
.13,,,,,	next verb come same
,.15,,-.07,,	next verb complete other
.06,,,,,	next verb correct other
.04,,,,,	next verb crack same
.04,,,,,	next verb cut other
.1,,,,,	next verb cut same
.09,,,,,	next verb dig same
,,,.07,,	next verb do other
.1,,,,,	next verb draw same
.16,,,,,	next verb drill same
.2,,,,,	next verb drop same
,-.06,,.17,,	next verb dry other
.19,,,,,	next verb either same
.12,,,,,	next verb feather same
.16,,,,,	next verb figure same
.08,,,,,	next verb find same
,.15,,,,	next verb finish same
,.04,,,,	next verb fit same
.3,,,,,	next verb fix same
.12,,,,,	next verb flash same
.08,,,,,	next verb float same
-.1,-.11,,,.23,	next verb forget same
,-.11,,,,.18	next verb give same
.16,,,,,	next verb glue other
,,,.06,,	next verb glue same
,.22,,,,	next verb go other
.21,-.11,,,,	next verb gotta same
.14,,,,,	next verb guess same
,,,.06,,	next verb hang same
,-.12,,.14,,	next verb hold other
,.1,,,,	next verb hook same
.22,,,-.09,,	next verb hum other
,.14,,,,	next verb hum same
-.13,,,,,	next verb keep same
.05,,,,,	next verb lay same
,,,.05,,	next verb leak same
,,,.06,,	next verb level same
.15,,,,,	next verb make other
.05,,,,,	next verb make same
.13,,,,,	next verb mention same
.04,,,,,	next verb miss same
,.1,,,,	next verb move other
.12,,,,,	next verb mud same
,-.05,,,,	next verb open same
,-.14,.09,,,	next verb order other
-.21,.18,,,.05,	next verb order same
.09,,,,,	next verb pack same
.18,,,,,	next verb patch same
.12,,-.09,,,	next verb pin same
.07,,,,,	next verb plane same
.05,,,,,	next verb point same
-.04,.16,,,,	next verb pop same
,.09,,,,	next verb pour same
.11,,,,,	next verb pull same
.05,,,,,	next verb read same
,,.11,,,	next verb reckon same
.06,,,,,	next verb recut same
.05,-.05,,,,	next verb rehang same
-.24,.32,,,,	next verb reorder same
.15,,,,,	next verb reroute same
.15,,,,,	next verb reset same
,,,.08,,	next verb run other
.04,,,,,	next verb sand same
-.17,.29,,,,	next verb say other
.14,,,,,	next verb see same
-.04,.11,,,,	next verb send same
.12,,,,,	next verb shave same
.18,,,,,	next verb sign same
.17,,,,,	next verb sister same
-.09,-.13,,.14,,	next verb sit other
.15,,,,,	next verb skim same
.08,,,,,	next verb stain same
,,.06,,,	next verb start other
-.19,,.11,,,	next verb stick same
.19,,,,,	next verb strip same
,.12,,,,	next verb stuff same
,-.07,,.09,,	next verb swear same
-.11,,,.17,,	next verb swing same
-.08,.17,,,,	next verb take other
.14,,,,,	next verb tighten same
.06,,,,,	next verb try same
.06,,,,,	next verb turn same
-.04,,,,,.11	next verb walk same
.08,,,,,	next verb wipe same
-.07,,,.2,,	next verb wire same
.16,-.07,,,,	one after have far
,.06,,,,	one after have sentence
-.04,,,.13,,	one after need far
-.17,.29,,,,	one after need here
-.24,,,.05,,	one after none far
.22,,,,,	one after none here
-.05,,,,.09,	one after used far
-.08,-.07,,.22,,.07	one after used here
-.16,.08,.13,,,	one beside be
-.21,.33,,,,	one beside bring
-.37,,-.05,-.15,.16,.2	one beside buy
-.22,.28,,,,	one beside buy b nobody
-.09,,,,,	one beside get
,,,.05,,	one beside go
-.22,.28,,,,	one beside grab
,,.08,,,	one beside has
.05,,,,,	one beside have b other
.07,,,,,	one beside hit
,,.06,,,	one beside is
.08,,,,,	one beside like
.13,,,,,	one beside make
.1,,,,,	one beside move pp person
-.05,.21,,,,	one beside need
,.04,,,,	one beside need b other
-.05,.22,,,,	one beside need b person
,.07,,,,	one beside need s nobody
-.05,.15,,,,	one beside need s other
-.22,.26,,,,	one beside other b nobody
-.25,.17,,,,	one beside other b other
-.09,.05,,,.05,	one beside other b person
-.18,.3,,,,	one beside other i other
.18,,,,,	one beside other i person
-.23,,.15,,,	one beside other p person
-.19,,,,.19,	one beside owe
.17,-.19,,,,	one beside pick
-.21,,,.33,,	one beside put
,.06,,,,	one beside run
.08,,,,,	one beside say b nobody
-.08,,,.19,,	one beside set
.07,,,,,	one beside sit
.27,,,-.06,,	one beside take
.1,,,,,	one beside undefined has other
,,.09,,,	one beside undefined is other
-.06,,,.16,,	one beside use
-.27,,,.36,,	one beside work bpp nobody
.18,,,,,	one beside work bpp other
-.12,,,.26,,	one beside work bpp person
.19,,,,,	one beside work i other
,,,-.07,,	one beside work i person
.21,,,,,	one beside work p person
-.09,,,.19,,	one beside work pp nobody
-.15,.05,,.1,,	one beside work pp other
-.09,,,.29,,	one beside work pp person
-.07,.19,,,,	one buy imperative behind
-.35,-.11,,-.07,.3,.17	one buy past behind
,,,.06,,	one cue back
-.14,-.13,,,.25,.14	one cue bought
-.08,,,,,	one cue have
,.37,,,,	one cue need
,,,.11,,	one cue used
-.11,,,,,	one false
.08,,,,,	one have present behind
-.38,,.11,.15,,	one kept
-.15,.12,,,,	one left #
.27,-.07,,,,	one left G
-.45,.33,,.05,,	one left and
.19,,,,,	one left as
-.21,.11,.15,,,	one left be
-.19,.3,,,,	one left bring
-.37,,-.05,-.15,.16,.2	one left buy
.16,,,,,	one left cut
-.05,,,,,	one left get
-.21,.26,,,,	one left grab
,,.11,,,	one left has
.07,,,,,	one left hit
,,,.13,,	one left in
,,.09,,,	one left is
-.05,.13,,,,	one left it's
.1,,,,,	one left leave
.08,,,,,	one left like
-.07,.22,,,,	one left need
-.07,,,.1,,	one left put
,.11,,,,	one left run
-.15,,,.23,,	one left set
.19,,,,,	one left that's
.31,,,,,	one left there's
.11,-.11,,,,	one left up
-.38,,,.41,,	one left use
-.31,.1,,.15,,	one left with
.09,,,,,	one more
.08,,,,,	one move present behind
-.16,.23,,,,	one named before area
-.22,.19,,,,	one named before material
-.09,,,.25,,	one named before part
.05,,,,,	one named before surface
-.25,,.16,,,	one named before tool
-.34,,,.08,,	one named here material
-.5,.16,,.12,,	one named here part
-.06,.25,,,,	one named here tool
-.11,.1,,,,	one need modal behind
-.09,.26,,,,	one need owed behind
.2,,,,,	one not ahead
-.1,,,.14,,	one null none no
-.18,.16,,.07,,	one other copula before
-.39,.33,.07,,,	one other imperative behind
,.07,,,,	one other modal behind
,.06,,,,	one other owed behind
,.14,,-.18,,	one other past before
-.26,,.2,,,	one other past behind
-.04,,,,.09,	one other present behind
-.04,,,,,	one right #
-.05,.14,,,,	one right T
-.16,.33,,,,	one right and
-.31,.22,,.13,,	one right are
.27,,,,,	one right before
-.15,,.04,.12,,	one right in
.08,,,,,	one right of
.17,,,,,	one right out
,,,.11,,	one right over
-.14,,,,.13,	one right the
-.1,,,.18,,	one right up
.12,,,,,	one say imperative behind
-.18,.16,,.07,,	one says copula before
-.12,.18,,,,	one says imperative behind
-.07,,.06,,,	one says imperative behind not
,.15,,,,	one says modal behind
-.1,,,.18,,	one says none no
,.1,,,,	one says none no not
-.05,.21,,,,	one says owed behind
-.17,.26,,,,	one says past before
-.31,,,.37,,	one says past behind not
-.09,,,,.08,	one says present before
.06,,,,,	one says present behind not
-.31,,,,,	one sized
,.13,,,,	one then move b
.14,,,,,	one then move pp
,.14,,,,	one then other b
,.1,,-.12,,	one then other p
-.15,.13,,,,	one then undefined is
-.18,.08,,,.17,	one then undefined will
,.12,,,,	one then work b
-.2,,,.28,,	one then work pp
,,,,.09,	one then work s
,.2,,,,	one true
,,,.06,,	one use past behind
.11,,,,,	one verb ask behind
-.18,.16,,.07,,	one verb be before
-.17,.32,,,,	one verb bring behind
-.33,,,-.08,.22,.17	one verb buy behind
.21,,,,,	one verb find behind
-.14,,.13,,,	one verb get behind
,-.04,,-.06,.18,	one verb go behind
-.07,.19,,,,	one verb grab behind
.13,,,,,	one verb leave behind
,.2,,,,	one verb need behind
-.1,,,.14,,	one verb null no
-.24,.1,,,.21,	one verb owe behind
-.19,,,.29,,	one verb put behind
,.06,,-.08,,	one verb run behind
,.09,,,,	one verb send behind
-.19,,,.25,,	one verb set behind
,,,.06,,	one verb use behind
-.07,.09,,,,	one verb want behind
,,,.08,,	one whole clause
-.26,.21,,.08,,	one work past before
,,,.35,,	one work past behind
.04,,,,,	opens boss
.08,,,,,	opens cause
-.32,,-.1,.43,,	opens clause area
-.26,,,.1,,	opens clause count
-.2,.1,,.19,,	opens clause length
-.15,.12,,,,	opens clause one
-.28,,,,,	opens clause pack
-.24,,,,,	opens clause volume
-.34,.23,,.09,,	opens clause weight
.06,,,,,	opens now
.19,,,,,	opens oh
.17,,,,,	opens ok
,.04,,,,	opens or
-.19,.4,,,,	opens plus
-.21,.15,,-.19,,	pack after have far
.18,-.08,,,,	pack after have here
-.08,.29,,-.12,,	pack after have sentence
-.18,.45,,,,	pack after need here
,.46,,-.19,,	pack after need sentence
-.21,,,,,	pack after none far
-.17,.33,-.16,,,	pack after none here
-.22,,,,,	pack after none sentence
-.14,,,,.09,	pack after returned far
,,.19,,,	pack after used far
-.14,-.24,,.3,,	pack after used here
-.3,,,,,	pack after used sentence
.15,,,,,	pack bag
,.19,,,,	pack beside buy
,.19,,,,	pack beside buy b nobody
-.19,,-.06,.3,,	pack beside eat
,,.11,,,	pack beside get
,,,.3,,	pack beside go
-.16,.16,,,,	pack beside grab
,,.27,,,	pack beside have
,,.1,,,	pack beside have b person
-.3,.21,.1,-.11,,	pack beside is
,,.18,-.13,,	pack beside leave
,,,.23,,	pack beside move p nobody
,,,.31,,	pack beside move p other
,,,.15,,	pack beside move p person
.24,-.05,,-.05,,	pack beside move pp other
,.11,,,,	pack beside need
,.2,,,,	pack beside need b nobody
,.22,,,,	pack beside need b other
-.37,,,,,	pack beside nothing
-.08,.15,,,,	pack beside order
,.34,,,,	pack beside other b nobody
-.18,.29,-.13,,,	pack beside other b other
-.08,-.12,.21,,,	pack beside other p nobody
-.23,-.21,,.42,,	pack beside other p other
,-.06,.37,-.22,,	pack beside other p person
-.25,-.27,.1,-.22,.31,	pack beside other pp nobody
-.25,.09,-.06,-.16,.24,	pack beside pick
-.14,.12,,,,	pack beside put
-.44,,,.22,,	pack beside take
,,,-.08,,	pack beside undefined is other
,,,.21,,	pack beside use
-.23,,,.25,,	pack beside use b person
,,,.05,,	pack beside use pp nobody
,,,.27,,	pack beside use pp person
,.2,,,,	pack beside want
-.24,.2,.07,-.07,,	pack beside work b other
.04,-.05,,,,	pack beside work b person
-.33,.27,,,,	pack beside work bpp nobody
,-.28,,.14,,	pack beside work bpp person
,,,.13,,	pack beside work pp nobody
-.17,,,.19,,	pack beside work pp other
-.1,-.13,,.48,,	pack beside work pp person
.05,,,,,	pack box
,.26,,,,	pack buy imperative behind
-.25,.32,,,,	pack buy modal behind
.12,,,-.05,,	pack can
-.08,.13,,,,	pack cue back
-.44,-.09,-.24,,.48,	pack cue bought
-.06,,.69,,,	pack cue have
,.63,,,,	pack cue need
,,,.05,,	pack cue used
.31,-.13,,,,	pack flat
,,-.08,,,	pack have present before
,,.27,,,	pack have present behind
-.04,-.18,.41,,,	pack kept
-.28,,,,,	pack left #
-.08,,,.09,,	pack left +
-.22,,-.07,.35,,	pack left G
-.38,.33,.1,-.38,,	pack left Q
-.19,-.28,,.15,.2,	pack left T
,,.06,-.18,,	pack left about
-.07,.3,,,,	pack left and
-.12,,.1,,,	pack left bring
,.21,,,,	pack left buy
-.51,,.42,-.09,,	pack left get
-.13,,,,.1,	pack left grab
-.3,,.41,,,	pack left have
.15,,,,,	pack left in
-.3,.21,.1,-.11,,	pack left is
,.06,,,,	pack left need
.21,,,,,	pack left of
.2,,,,,	pack left over
-.33,,,.2,,	pack left take
-.31,-.32,.47,-.22,,	pack left there's
,,,.28,,	pack left through
-.32,.05,-.06,,.15,	pack left up
,,,.15,,	pack left use
-.31,.55,,,,	pack more
-.11,,.32,,,	pack move past before
-.09,,.1,.06,,	pack move past behind
-.07,,,,,	pack name flawed
-.06,-.17,,.27,,	pack named before area
-.13,,,,,	pack named before fixture
.22,,,,,	pack named before part
,-.12,.07,,,	pack named before surface
-.4,,,,,	pack named here material
,,,-.15,,	pack named here part
-.1,.32,-.1,,,	pack named here surface
-.53,,.11,,,	pack named here word
,-.09,.11,,,	pack need modal behind
,.27,,,,	pack need owed behind
-.17,.35,,,,	pack not ahead
-.24,.23,-.17,.05,,	pack null copula before
-.28,.04,.23,,,	pack null copula behind
,.14,,,,	pack null imperative behind
-.34,.07,,,,	pack null none no
,.24,,,,	pack other imperative behind
-.27,.44,,-.09,,	pack other modal behind
-.18,-.15,.2,,.08,	pack other past behind
,-.24,,.05,,	pack other present behind
,.15,,,,	pack pointing
-.24,,,,,	pack right #
-.11,,-.23,.22,,	pack right Q
-.25,,.14,,,	pack right T
-.28,.19,,,,	pack right and
-.11,-.1,.26,-.09,,	pack right are
,-.09,,,,	pack right be
,.17,,,,	pack right for
-.32,-.24,-.25,.47,,	pack right go
,,.28,,,	pack right in
,-.18,.14,,,	pack right is
,,.28,,,	pack right leave
.07,-.22,.19,,,	pack right no
,,.23,-.13,,	pack right on
.22,,,,,	pack right say
-.3,.38,-.06,,,	pack right short
-.34,.07,,,,	pack right the
-.22,.22,.06,-.15,,	pack right to
.13,,-.05,-.09,,	pack roll
-.21,,.12,,,	pack says copula behind
-.27,.69,,,,	pack says imperative behind
,,.11,-.15,,	pack says modal before
-.05,.32,,,,	pack says modal behind
-.28,,,,,	pack says none no
,.41,,,,	pack says owed behind
-.3,,.15,,,	pack says past before
-.07,,,.27,,	pack says past behind
,.28,-.2,-.14,,	pack says present before
-.1,,,,,	pack says present behind
-.25,.14,,,,	pack sized
-.52,,,,,	pack sold so false
-.33,,,,,	pack sold so true
-.32,-.24,-.25,.47,,	pack then move p
,,.31,,,	pack then move pp
,-.11,,.09,,	pack then other p
.05,.05,,-.07,,	pack then other s
,,.2,,,	pack then undefined is
,,-.09,,,	pack then work b
.07,,,,,	pack tin
.39,,,,,	pack tub
,,,.18,,	pack use past behind
-.14,,,.46,,	pack use present behind
,.1,,,,	pack verb buy behind
-.18,,,.23,,	pack verb go behind
-.16,.22,,,,	pack verb grab behind
,,-.08,,,	pack verb have before
,,.27,,,	pack verb have behind
,,.25,,,	pack verb leave before
,-.2,.35,-.18,,	pack verb leave behind
,.05,,,,	pack verb need behind
-.24,.23,-.17,.05,,	pack verb null before
-.29,.09,.19,,,	pack verb null behind
-.34,.07,,,,	pack verb null no
-.08,.15,,,,	pack verb order behind
-.19,,,-.14,.37,	pack verb pick behind
-.1,.24,,-.07,,	pack verb put behind
-.44,,.06,.2,,	pack verb take behind
-.33,,,-.06,.2,	pack verb throw behind
,,,.25,,	pack verb use behind
-.21,.35,,,,	pack verb want behind
-.38,,,,,	pack whole clause
-.1,.3,,-.05,,	pack work imperative behind
,.05,,-.07,,	pack work modal behind
-.21,-.2,,.28,,	pack work past before
-.2,,,.54,,	pack work past behind
-.19,.06,,,,	pack work present behind
-.26,,,,,	plural count
-.05,,,,,	plural one
-.05,,,,,	plural pack
-.41,,.13,.1,,	plural volume
-.33,.24,,.09,,	plural weight
.18,-.05,,,,	pointer after need here
,,,.13,,	pointer cue used
,,,,,.06	pointer name flawed
-.08,,,.2,,	pointer named before material
.26,,,,,	pointer named before part
,,,.11,,	pointer right #
-.16,,,.17,,	pointer says past behind
-.34,.06,,.17,,	pointing
-.29,.33,,,,	right &
-.06,.18,,,,	right (
.1,,,,,	right ( Q
-.26,.07,,.11,,	right + Q
-.14,,,.12,,	right /
-.1,.18,,,,	right / G
,.11,,,,	right @
.08,,,,,	right Q #
.17,,,,,	right Q Q
.16,,,,,	right T and
.1,,,,,	right a
.08,,,,,	right above the
.1,,,,,	right across
.15,,,,,	right after
,,.08,,,	right already
.15,,,,,	right already #
,.14,,,,	right and G
-.1,.11,,,,	right and Q
-.17,.06,,,,	right and a
.09,,,,,	right are Q
.11,,,,,	right are cut
-.12,,,.21,,	right are glue
-.12,,,.17,,	right are hang
.07,,,,,	right are in
,,,.14,,	right are on
,,,.06,,	right around the
,,.16,,,	right arrive
.06,,,,,	right at all
,.09,,,,	right back
,.13,,,,	right back on
.04,,,,,	right be Q
.11,,,,,	right below
.11,,,,,	right bend
.2,,,,,	right bend #
.13,,,,,	right both
-.18,,,-.07,,.18	right box
.05,,,,,	right bring
.06,,,,,	right buzz
.11,,,,,	right by G
-.11,.12,,,,	right can
,.09,,,,	right can't
,,,.12,,	right change
.06,,,,,	right come up
,.05,,,,	right crack #
,.14,,,,	right cup
,,,.13,,	right cut
,,,.15,,	right cut #
.14,,,,,	right dead
.14,,,,,	right didn't
,,.13,,,	right do #
-.05,,,.21,,	right don't
-.17,-.05,,.28,,	right each
-.06,,,.13,,	right fit
,.07,,,,	right for G
-.08,.05,,,,	right for that
-.11,,,.24,,	right glue
,,,.15,,	right glue #
-.21,-.11,,.34,,	right go #
.16,,,,,	right go Q
.14,,,,,	right go down
-.05,,,.15,,	right go on
.12,,,,,	right go through
,,,,,.08	right have to
,.15,,,,	right head
,,.27,,,	right here
-.05,,.25,,,	right here #
-.12,,,.51,,	right in #
.12,,,,,	right in Q
,,,.27,,	right in it
-.13,-.09,.28,-.14,,	right in my
.2,,,,,	right in there
.05,,,,,	right is crack
.14,,,,,	right is do
.05,,,,,	right is fine
-.21,-.05,,.31,,	right is go
-.08,.17,,,,	right is gonna
.05,,,,,	right just
,,.36,,,	right leave
-.08,,.4,,,	right leave #
,,.15,,,	right leave from
,,.04,-.07,,	right leave on
,,.25,,,	right leave over
.04,,,,,	right lose
,.14,,,,	right miss #
,.13,,,,	right more
-.18,.29,,,,	right more #
,,,.07,,	right mount
-.06,,,.2,,	right mount #
.09,,,,,	right my
-.04,.21,,,,	right need #
.13,,,,,	right need Q
-.04,,,.13,,	right never
,.05,,,,	right next
,-.2,.18,,,	right no #
.11,,,,,	right now #
,,.05,,,	right of Q
,.12,,-.05,,	right of that
-.22,,,.31,,	right of them
.16,,,,,	right off #
,,,.15,,	right on #
,,.08,,,	right on G
.19,,,,,	right on Q
,.05,,,,	right on T
.12,,,,,	right on in
-.2,,,,.34,	right on order
-.08,-.15,.26,-.19,,	right on site
.09,,,,,	right on that
.09,,,,,	right open
.09,,,,,	right or
.13,,,,,	right out #
-.11,.17,,,,	right peel
-.05,,,.14,,	right replace
.14,,,,,	right replace #
.09,,,,,	right say Q
,,,,,.08	right scratch
,.24,,,,	right short
,.28,,,,	right short #
-.14,.22,,,,	right should
,,,.05,,	right since
,,.1,,,	right sit
,,,.08,,	right so
,,,.08,,	right so that
-.14,,,.12,,	right stain
.05,,,,,	right stick #
,,.17,,,	right still
,-.07,.15,,,	right still in
.23,,,,,	right still to
,,.05,,,	right strip
-.04,,.12,,,	right strip #
,,,.05,,	right swap
.06,,,,,	right tear #
-.33,.18,,,.2,	right the Q
.05,,,,,	right then
,.1,,,,	right there
.06,,,,,	right through
.2,,,,,	right to Q
.12,,,,,	right to go
.06,,,,,	right to wall
-.09,,.18,,,	right turn
.07,,,,,	right underneath
,,,.12,,	right up #
.08,,,,,	right up T
.19,,,,,	right up to
,,,.17,,	right use
-.16,,,.25,,	right use #
.06,,,,,	right want the
,,.06,,,	right when i
,,,.09,,	right where the
,,,.18,,	right wire
,,,.08,,	right wire #
.05,,,,,	right with G
.18,,,,,	right with a
,.13,,,,	right with me
.14,,,,,	right without
-.29,.33,,,,	right1 &
-.06,.18,,,,	right1 (
-.14,,,.12,,	right1 /
,.11,,,,	right1 @
.1,,,,,	right1 a
.1,,,,,	right1 across
.15,,,,,	right1 after
,,.08,,,	right1 already
,,.16,,,	right1 arrive
,.09,,,,	right1 back
.11,,,,,	right1 below
.11,,,,,	right1 bend
.13,,,,,	right1 both
-.18,,,-.07,,.18	right1 box
.05,,,,,	right1 bring
.06,,,,,	right1 buzz
-.11,.12,,,,	right1 can
,.09,,,,	right1 can't
,,,.12,,	right1 change
,.14,,,,	right1 cup
,,,.13,,	right1 cut
.14,,,,,	right1 dead
.14,,,,,	right1 didn't
-.05,,,.21,,	right1 don't
-.17,-.05,,.28,,	right1 each
-.06,,,.13,,	right1 fit
-.11,,,.24,,	right1 glue
,.15,,,,	right1 head
,,.27,,,	right1 here
.05,,,,,	right1 just
,,.36,,,	right1 leave
.04,,,,,	right1 lose
-.04,.06,,,,	right1 mark.
,.13,,,,	right1 more
,,,.07,,	right1 mount
.09,,,,,	right1 my
-.04,,,.13,,	right1 never
,.05,,,,	right1 next
.09,,,,,	right1 open
.09,,,,,	right1 or
-.11,.17,,,,	right1 peel
-.05,,,.14,,	right1 replace
,,,,,.08	right1 scratch
,.24,,,,	right1 short
-.14,.22,,,,	right1 should
,,,.05,,	right1 since
,,.1,,,	right1 sit
,,,.08,,	right1 so
-.14,,,.12,,	right1 stain
,,.17,,,	right1 still
,,.05,,,	right1 strip
,,,.05,,	right1 swap
.16,,,,,	right1 t area.
.05,,,,,	right1 then
,.1,,,,	right1 there
.06,,,,,	right1 through
-.09,,.18,,,	right1 turn
.07,,,,,	right1 underneath
,,,.17,,	right1 use
,,,.06,,	right1 v buy.
,,,.17,,	right1 v use.
,,,.18,,	right1 wire
.14,,,,,	right1 without
.2,,,,,	right2 about
.07,,,,,	right2 again
.05,,,,,	right2 all
,.12,,,,	right2 anything
,,,.15,,	right2 bad
.17,,,,,	right2 before
.06,,,,,	right2 behind
,.1,,,,	right2 ceiling
.07,,,,,	right2 come
.06,,,,,	right2 cut
-.3,,,,.06,.08	right2 deliver
.08,,,,,	right2 drop
-.16,.31,,-.04,,	right2 each
-.23,,.16,-.06,,	right2 extra
.04,,,,,	right2 flash
-.08,.31,,,,	right2 for
-.19,-.1,,.28,,	right2 front
,,,.13,,	right2 glue
-.05,.14,,,,	right2 gonna
,-.13,,,,	right2 hang
.07,,,,,	right2 has
.05,,,-.05,,	right2 here
.04,,,,,	right2 hinge
.06,,,,,	right2 into
.06,,,,,	right2 is
.12,,,,,	right2 keep
,.12,,,,	right2 kitchen
.19,,,,,	right2 leak
-.07,,,,,	right2 leave
,,.07,,,	right2 loose
-.04,,.26,,,	right2 my
,.09,,,,	right2 need
.14,,,,,	right2 new
.11,,,,,	right2 notch
-.04,,,,,	right2 of
.25,,,-.04,,	right2 old
-.28,.17,.14,,,	right2 ones
.1,,,,,	right2 only
,,,.13,,	right2 open
-.19,,,,.3,	right2 order
,,.14,,,	right2 over
,,,,.07,	right2 pack
.05,,,,,	right2 pipe
.11,,,,,	right2 pull
-.07,,,,,	right2 put
.11,,,,,	right2 read
.23,,,,,	right2 run
-.11,.17,,,,	right2 send
.14,,,,,	right2 set
,,,.14,,	right2 side
-.08,-.15,.26,-.19,,	right2 site
.16,,,,,	right2 so
-.38,.15,,.24,,	right2 split
-.14,.08,,.09,,	right2 still
.09,,,,,	right2 strip
,.06,,,,	right2 t finish.
,,,,,.05	right2 t role.
.2,,-.07,,,	right2 t tool.
,,.15,-.09,,	right2 their
-.18,,,.29,,	right2 them
.08,,,,,	right2 they
.08,,,,,	right2 this
.06,,,,,	right2 through
.07,,,,,	right2 to
.12,,,,,	right2 under
-.23,,,-.13,.33,	right2 v buy.
-.14,,,.15,,	right2 v say.
.11,,,,,	right2 v see.
,.09,,,,	right2 wait
.04,,,,,	right2 we
.05,,,,,	right2 where
-.24,.31,,,,	right2 white
.09,,,,,	right2 you
.1,,,,,	right3 about
.15,,,,,	right3 across
,.06,,,,	right3 and
-.13,,,.19,,	right3 around
.06,,,,,	right3 backwards
-.11,,.18,,,	right3 basement
.11,,,,,	right3 both
,,.05,,,	right3 bottom
.15,,,,,	right3 ceiling
.07,-.06,,,,	right3 closet
.11,,,,,	right3 corner
,-.07,,,,	right3 counter
.11,,,,,	right3 deep
.18,,,-.05,,	right3 den
.08,,,,,	right3 em
.07,,,,,	right3 end
.05,,,,,	right3 every
.18,,,,,	right3 flat
.08,,,,,	right3 floor
.09,,,,,	right3 front
,,,,,.14	right3 get
.13,,,,,	right3 guy
.12,,,,,	right3 hall
.17,,,,,	right3 hallway
.14,,,,,	right3 hang
,.11,,,,	right3 has
-.06,.13,,,,	right3 have
.1,,,,,	right3 house
-.07,.16,,,,	right3 if
.15,,,,,	right3 kitchen
.05,,,,,	right3 last
-.07,.07,,,,	right3 long
,-.08,,.18,,	right3 me
,.07,,,,	right3 new
,-.16,,.06,,	right3 no
,,,.1,,	right3 now
.1,,,,,	right3 off
.05,,,,,	right3 only
.12,,,,,	right3 open
.05,,,,,	right3 outside
.23,,,-.12,,	right3 over
.07,,,,,	right3 proud
.15,,,,,	right3 second
.11,,,,,	right3 set
-.14,,.09,,,	right3 shop
.06,,,,,	right3 short
.08,,,,,	right3 split
,,.07,,,	right3 stairs
-.13,,,.19,,	right3 stand
.14,,,,,	right3 steps
.22,,,,,	right3 still
,.06,,,,	right3 that
-.06,.16,,,,	right3 them
-.27,.16,,.16,,	right3 though
-.26,-.16,.24,.04,,	right3 truck
-.2,-.07,.31,-.13,,	right3 van
.14,,,,,	right3 walk
.2,,,,,	right3 wall
,,,,.09,	right3 way
.07,,,,,	right3 when
.21,,,,,	right3 where
.33,-.21,,,,	right3 which
-.11,.18,,,,	right3 wrap
-.13,,,,,	sold so false
-.37,,,,,	sold so true
-.06,,,.19,,	sort area
-.18,,,,,	sort pack
-.38,,,,,	sort volume
-.08,,,,,	sort weight
,,.08,,,	then arrive
,,.13,,,	then arrive pp
,.1,,,,	then bag
-.05,.13,,-.04,,	then bag b
.11,,,,,	then bend
.13,,,,,	then bend pp
.06,,,,,	then bolt
.06,,,,,	then bolt pp
.08,,,,,	then book
.21,,,,,	then bow
-.1,,,-.06,,.17	then box s
.04,,,,,	then burn
-.09,,-.06,,.1,	then buy
-.08,,,-.04,.23,	then buy b
-.24,-.16,-.06,,.28,	then buy pp
.06,,,,,	then buzz
.05,,,,,	then call
,.07,,,,	then can't
,.07,,,,	then can't will
,,,.12,,	then change
.1,,,,,	then complete
,.14,,,,	then cup
,,,.07,,	then cut
,,,.11,,	then cut bpp
,,,,.18,	then didn't
,,,,.18,	then didn't will
-.07,,,,,	then do b
,.07,,,,	then doesn't
,.07,,,,	then doesn't will
,,,.07,,	then don't
,,,.07,,	then don't will
.15,,,,,	then drop
.16,,,,,	then drop pp
,.05,,,,	then eat p
-.06,,,.13,,	then fit
-.06,.15,,,,	then get b
.04,,,,,	then get s
-.16,,,.29,,	then glue
-.16,,,.29,,	then glue pp
.1,,,,,	then go b
.06,,,,,	then go i
,,,.26,,	then go p
.14,,,,,	then hang
,.08,,,,	then head
,.11,,,,	then head b
.1,,,,,	then keep
.2,,,,,	then land b
.05,,,,,	then leak
,,.19,,,	then leave
,,.24,,,	then leave pp
,,,.17,,	then leave s
.1,,,,,	then look
,,.09,,,	then measure i
,,,.07,,	then mount
,,,.07,,	then mount pp
,,,.26,,	then move p
,,.22,,,	then move pp
-.17,.41,,,,	then need pp
.22,,,,,	then open b
-.1,,,,.39,	then order
-.19,,,,.39,	then order b
-.09,.2,,,,	then peel
,.12,,,,	then pull i
.09,,,,,	then pull pp
,.07,,,,	then put bpp
,,,.1,,	then replace
,,,.1,,	then replace pp
.19,,,-.04,,	then run bp
.07,,,,,	then say b
,,,.21,,	then say pp
.13,-.06,,,,	then scratch
.25,-.12,,,,	then scratch b
,,,.11,,	then seal
.1,,,,,	then send
.1,,,,,	then send pp
-.12,.06,.09,,,	then should
-.12,.06,.09,,,	then should will
.16,,,,,	then show b
,,.16,,,	then sit
,,.19,,,	then sit i
-.07,.17,,,,	then snap
-.07,.17,,,,	then snap pp
.13,,,,,	then sound
.17,,,,,	then sound b
.17,,,,,	then split
.17,,,,,	then split bpp
.09,,,,,	then squeak
-.14,,,.12,,	then stain
-.14,,,.12,,	then stain pp
-.09,,,.17,,	then stand
.11,,,,,	then start
,.07,,,,	then stay s
-.21,,.2,,,	then strip b
.19,,,,,	then strip pp
,,,.13,,	then swap pp
.06,,,,,	then take p
,,.07,,,	then turn
-.14,,.2,,,	then turn b
.07,,,,,	then turn pp
,,,.17,,	then use
,,,.25,,	then use pp
.12,,,,,	then wait
.14,,,,,	then walk
.14,,,,,	then walk b
.13,,,,,	then want b
-.2,.24,,-.1,,	then want pp
.05,,,,,	then weep
,,,.18,,	then wire
,,,.18,,	then wire pp
.06,,,,,	then won't
.06,,,,,	then won't will
.19,,,-.04,,	then work bp
,-.14,.05,,,	unit L
-.39,,,.11,,	unit bag
,,,-.16,,	unit bottle
-.22,,,,,	unit box
-.04,,,,,	unit bucket
-.14,,,,.08,	unit bundle
-.37,,,.2,,	unit can
-.26,,.22,-.07,,	unit case
.55,,,,,	unit coat
-.38,.25,,,,	unit each
-.37,,,,,	unit from said
-.33,,,,,	unit gal
-.3,,,.11,,	unit kit
,.13,,,,	unit lb
-.31,-.12,.06,,.14,	unit length
-.04,,,,,	unit m
,.2,,,,	unit pack
-.29,,,.27,,	unit pail
-.26,.06,,.08,,	unit pair
-.48,.06,,,,	unit qt
-.53,,,,,	unit roll
.39,-.12,,,,	unit row
-.24,,,.21,,	unit sheet
-.25,.19,,,,	unit sleeve
,.06,,,,	unit sq ft
,,,.09,,	unit sq m
-.57,.27,,,,	unit stick
-.39,.05,.1,.06,,	unit tin
-.22,.13,,,,	unit tub
-.41,.22,,,,	unit tube
-.32,.39,,,,	unit yd
-.19,,,,.16,	use buy before
,.08,,,,	use buy behind
,.2,,,,	use buy imperative behind
-.09,.21,,,,	use buy modal behind
-.23,-.12,,,.23,	use buy past before
-.11,-.29,,-.05,.5,	use buy past behind
.08,,,,,	use move modal before
.11,,,,,	use move modal behind
,,,,.1,	use move owed behind
.05,,,,,	use move present behind
,.13,,,,	use need behind
,.14,,,,	use need owed behind
-.15,.37,,,,	use need past before
.04,,,,,	use need past behind
,.1,,,,	use need present behind
.18,,,,,	use null modal before
,.24,,,,	use other imperative behind
-.27,-.09,,-.07,,.34	use return behind
.13,,,,,	use say modal behind
.07,,,,,	use say past before
.14,,,,,	use say past behind
,,,.07,,	use see modal behind
-.26,,,.34,,	use use before
,,,.16,,	use use behind
-.26,,,.34,,	use use past before
,,,.2,,	use use past behind
,,,.32,,	use use present behind
.06,,,,,	verb adjust past
,,.09,,,	verb arrive before
-.05,,.11,,,	verb arrive past
.04,,,,,	verb ask imperative
.08,,,,,	verb be past
.19,,,,,	verb bend before
.19,,,,,	verb bend past
-.09,,,.16,,	verb bolt past
,.13,,,,	verb borrow past
-.05,.17,,,,	verb bring behind
,.19,,,,	verb bring imperative
,.19,,,,	verb bring modal
.09,,,,,	verb bring owed
-.33,-.23,.17,-.15,,.3	verb bring past
-.06,.13,,,,	verb bring present
-.08,,,.29,,	verb burn behind
-.08,,,.29,,	verb burn past
-.31,.1,-.05,,.13,	verb buy before
-.06,,,,,	verb buy behind
,.33,,,,	verb buy imperative
-.16,.25,,,,	verb buy owed
-.23,-.14,,,.29,.08	verb buy past
.06,,,,,	verb call present
,,,.15,,	verb can behind
,-.06,,.09,,	verb can modal
.16,,,,,	verb cap behind
.17,,,,,	verb cap past
-.05,,,.14,,	verb change before
-.11,,,.25,,	verb change behind
-.19,,,.31,,	verb change past
-.12,,,.22,,	verb change present
.05,,,,,	verb check present
.12,,,,,	verb chip past
-.1,,,.16,,	verb clear behind
.13,,,,,	verb come behind
.04,,,,,	verb come owed
.15,,,,,	verb come past
.14,,,,,	verb count behind
.14,,,,,	verb cover before
-.08,.05,,,,	verb crack before
.05,,,,,	verb cut imperative
.1,,,,,	verb ding behind
.09,,,,,	verb ding past
,,.05,,,	verb do before
-.23,,.2,,,	verb do imperative
,,,.17,,	verb do past
.05,,,,,	verb doesn't modal
.1,,,,,	verb drill behind
.09,,,,,	verb drill past
.07,,,,,	verb dry before
.08,,,,,	verb dry modal
,.17,,,,	verb dump before
,.1,,,,	verb dump present
.06,,,,,	verb ease behind
.06,,,,,	verb ease past
,.1,,-.04,,	verb falta behind
,.1,,-.04,,	verb falta owed
.05,,,,,	verb feel behind
.05,,,,,	verb feel modal
,.17,,-.04,,	verb figure behind
.08,,,,,	verb finish behind
-.07,,,.14,,	verb fit before
-.06,,,.2,,	verb fit behind
.09,,,,,	verb fit present
,,,.12,,	verb float behind
-.07,.15,,,,	verb forget behind
,,.18,-.04,,	verb fre behind
,,.16,,,	verb fre past
,.41,,,,	verb get imperative
.07,,,,,	verb get modal
,.07,,,,	verb get owed
,,.15,,,	verb get past
.07,,,,,	verb give behind
,,,.08,,	verb glue before
.05,,,,,	verb glue owed
,,,.08,,	verb glue past
,,,.38,,	verb go past
-.1,.21,,,,	verb guess behind
-.16,.25,,,,	verb guess present
,,,.21,,	verb hang behind
,,,.26,,	verb hang past
.05,,,,,	verb has behind
.09,,,,,	verb hit imperative
,,,.11,,	verb hit past
.06,,,,,	verb hold behind
.09,,,,,	verb hold past
.07,,,,,	verb hook modal
,.11,,,,	verb i'll behind
,.11,,,,	verb i'll modal
,,.05,,,	verb know behind
.05,,,,,	verb land behind
-.23,,,.16,,	verb lay behind
-.24,,,.24,,	verb lay past
.08,,,,,	verb leak before
,,.16,,,	verb leave before
.1,,,,,	verb leave imperative
,,.25,,,	verb leave past
.08,,,,,	verb leave present
.04,,,,,	verb like modal
.07,,,,,	verb lose behind
.11,,,,,	verb lose past
-.05,.12,,,,	verb make imperative
.05,,,,,	verb mark behind
.05,,,,,	verb mark past
.05,,,,,	verb miss before
-.26,.34,,,,	verb miss behind
,.06,,,,	verb miss present
-.16,-.07,,.31,,	verb mix behind
-.32,,,.4,,	verb mount past
.06,,,,,	verb move before
,.09,,,,	verb move modal
.05,,,,,	verb move past
-.04,,.16,,,	verb move present
.08,,,,,	verb nail before
,.19,,,,	verb need behind
,.17,,,,	verb need owed
-.12,.27,,,,	verb need past
.09,,,,,	verb open before
.12,,,,,	verb open past
-.06,.2,,,,	verb order behind
,.17,,,,	verb order imperative
,.11,,,,	verb order modal
,-.06,,,.28,	verb order past
,,,,.08,	verb owe behind
,,,,.08,	verb owe present
.09,,,,,	verb paint past
.1,,,,,	verb patch behind
.11,,,,,	verb patch past
-.06,,,,.2,	verb pick behind
,.27,,,,	verb pick imperative
,-.14,,-.08,.46,	verb pick past
.04,,,,,	verb plane behind
.16,,,,,	verb prime behind
.19,,,,,	verb prime imperative
.11,,,,,	verb pull present
.07,,,,,	verb push behind
.09,,,,,	verb push modal
,.1,,,,	verb put modal
,,,.2,,	verb put past
.05,,,,,	verb remind behind
.05,,,,,	verb remind imperative
,,,.1,,	verb replace before
,,,.17,,	verb replace behind
,,,.25,,	verb replace past
-.27,-.09,,-.07,,.34	verb return behind
.05,,,,,	verb rip past
,.08,,,,	verb run imperative
.13,,,,,	verb sand behind
.08,,,,,	verb sand imperative
.12,,,,,	verb sand owed
.22,,,,,	verb say modal
.07,,,,,	verb say past
.11,,,,,	verb scrape behind
,,,,,.07	verb scratch past
,,,.08,,	verb screw behind
,,,.07,,	verb screw past
,,,.11,,	verb see modal
,.13,,,,	verb send before
,.12,,,,	verb send modal
,,,,,.16	verb send past
.06,,,,,	verb send present
,,,.15,,	verb set behind
,,,.15,,	verb set past
.11,,,,,	verb shim before
.18,,,,,	verb shim behind
.2,,,,,	verb shim past
.09,,,,,	verb show behind
.07,,,,,	verb show present
.05,,,,,	verb silicone owed
,,,.18,,	verb sister past
,-.1,,,,	verb sit owed
.04,,,,,	verb slide behind
.12,,,,,	verb snake behind
.13,,,,,	verb snake past
-.21,.34,,,,	verb snap past
.1,,,,,	verb splice behind
-.07,,,.15,,	verb stagger behind
-.05,,,.13,,	verb stagger past
-.21,.11,,.1,,	verb stain before
.15,,,,,	verb stick behind
.11,,,,,	verb stop behind
.06,,,,,	verb stop past
.23,,,,,	verb strip before
.19,,,,,	verb strip past
-.13,,,.28,,	verb swap before
-.09,,,.32,,	verb swap past
,.07,,-.06,,	verb take before
-.06,,,,,.15	verb take behind
,,.12,,,	verb take imperative
,.23,,-.2,,	verb take modal
-.16,,,,,.28	verb take past
,.06,,,,	verb tape behind
-.05,.06,,,,	verb tape past
.05,,,,,	verb tell past
.1,,,,,	verb test behind
.07,,,,,	verb test past
,,,,.07,	verb throw imperative
-.06,,,.19,,	verb throw past
.1,,,,,	verb tile past
.07,,,,,	verb trim past
,,.09,,,	verb try behind
-.25,,.18,,,	verb try imperative
.22,,,,,	verb turn behind
.12,,,,,	verb turn past
-.26,,,.34,,	verb use before
,,,.16,,	verb use behind
,,,.29,,	verb use past
,,,.32,,	verb use present
.07,,,,,	verb wait before
.07,,,,,	verb wait present
,.05,,,,	verb want before
-.11,.17,,,,	verb want modal
,.1,,,,	verb want past
,.1,,,,	verb want present
,,,.14,,	verb wire before
,,,.12,,	verb wire past
-.23,.37,-.12,-.1,,	volume after have sentence
,-.13,.26,-.07,,	volume after need far
-.22,.35,-.04,,,	volume after need sentence
-.3,,.09,,,	volume after none far
-.28,,,.24,,	volume after none sentence
-.1,,.11,,,	volume beside get
-.16,,.34,,,	volume beside have
-.13,,.29,,,	volume beside have b person
,.13,,,,	volume beside need
-.11,.37,,,,	volume beside need b person
-.3,,.11,,,	volume beside nothing
-.05,.13,,,,	volume beside other b nobody
-.06,-.07,.27,-.06,,	volume beside other p person
,,,.26,,	volume beside use
,,,.21,,	volume beside use pp nobody
,,,.18,,	volume beside use pp person
-.31,,.61,-.05,,	volume cue have
-.04,.16,,,,	volume cue need
-.35,,,.26,,	volume cue used
-.22,.16,,,,	volume flawed
-.16,,.34,,,	volume have present behind
-.22,.07,.17,-.19,,	volume kept
-.24,,,,,	volume left #
-.33,,,,.16,	volume left and
-.06,,.18,,,	volume left get
,,.19,,,	volume left have
-.07,.32,,,,	volume left need
,,,.12,,	volume left use
-.25,-.07,.13,.11,,	volume move past before
-.05,-.1,.22,,,	volume named before material
-.37,.19,.18,-.22,,	volume named before word
-.26,,.17,,,	volume named here finish
-.53,.12,,,,	volume named here material
-.17,.13,-.16,.08,,	volume named here word
,.12,,,,	volume need owed behind
-.23,.06,.16,-.08,,	volume null copula behind
-.16,,.09,,,	volume null none no
-.05,.13,,,,	volume other imperative behind
-.2,-.16,.2,-.15,.14,	volume other past behind
-.35,,,.09,,	volume right #
-.22,.27,,,,	volume right and
,,.27,,,	volume right leave
-.29,.4,-.13,-.19,,	volume right of
-.1,-.06,.21,,,	volume right on
-.33,,.09,,,	volume says copula behind
-.26,.47,,,,	volume says imperative behind
-.16,,.09,,,	volume says none no
,.12,,,,	volume says owed behind
-.28,,,.09,,	volume says past before
-.29,,,.19,,	volume says past behind
,-.18,.12,,,	volume says present behind
-.11,,,,,	volume sold so false
-.17,,.17,,,	volume sold so true
,,.27,,,	volume then move pp
,,,.26,,	volume use past behind
-.1,,.11,,,	volume verb get behind
-.16,,.34,,,	volume verb have behind
-.04,,.23,,,	volume verb leave before
,.13,,,,	volume verb need behind
-.23,.06,.16,-.08,,	volume verb null behind
-.16,,.09,,,	volume verb null no
,,,.26,,	volume verb use behind
-.13,.09,,,,	volume whole clause
,.22,,-.06,,	weight after need sentence
,-.11,,.06,,	weight after used sentence
-.14,.12,,,,	weight beside nothing
-.24,,,.31,,	weight cue used
-.34,.23,,.09,,	weight left #
.19,,,,,	weight left at
-.14,,,.08,,	weight name flawed
-.07,,,.16,,	weight named before material
-.05,-.06,,.16,,	weight named before word
.18,,,,,	weight says copula behind
-.09,-.16,,.2,,	weight says past behind
,.16,,-.18,,	weight sized
-.12,.1,,,,	weight sold so false
,.22,,,,	who nobody owed
,,.29,,,	who nobody present
,,.31,,,	whole false
-.1,,,,,	whole true
`;

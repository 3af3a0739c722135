/** Written by `tests/learn/goods.ts`: none, need, have, used, bought, returned, each weight after a comma, then what was seen. */
export const FATE = `
.26,-.14,-.09,-.13,,	after #
,.21,-.17,-.19,,	after &
.15,,,,,	after '
,.15,-.12,-.15,.09,	after (
,,,.11,,	after /
,.15,-.15,,,	after @
.19,,-.08,-.12,,	after N
.1,,,,,	after Q
.12,,,,,	after T
.17,,,,,	after about
.34,-.12,-.1,-.14,,	after above
.17,-.13,-.09,-.16,,.14	after across
.26,-.18,-.21,-.19,,	after actually
-.21,-.12,-.09,.24,,	after add
.09,,,,,	after after
.13,,,-.11,,	after again
.16,,,,,	after all
.26,,,-.12,,	after along
.23,-.28,,-.23,,	after already
,,,.1,,	after an
,.13,,,,	after and
-.11,.16,,,,	after another
.13,,,,,	after any
.13,,,,,	after anyhow
.2,,,,,	after anything
,,,.09,,	after are
.09,,-.09,.13,,	after around
.11,-.2,.16,-.17,-.12,-.1	after arrive
-.1,,,.17,,	after arvo
.11,,,,,	after as
.17,,,,,	after attic
,-.1,,,,.12	after back
.18,,,-.09,,	after backwards
-.21,-.11,-.09,.24,,	after bad
-.26,.21,-.24,-.21,,.17	after bag
,-.13,.14,-.08,-.08,	after basement
,,,.1,,	after bath
.14,,,,,	after bathroom
,-.11,,,,	after bay
.13,,,,,	after be
.1,,-.22,-.18,,	after beat
.19,,,,,	after bedroom
.12,,,,,	after bedrooms
.15,,,,,	after behind
-.17,-.18,.09,.24,,	after bench
.21,-.11,,-.17,,	after bend
.11,,,,,	after between
.16,,,,,	after big
-.15,-.09,-.1,-.12,,.23	after bind
.18,,,,,	after blow
.15,-.21,-.22,,-.09,-.1	after board
,,,-.11,,	after bolt
.16,,,,,	after book
.16,,,,,	after both
,.12,,-.11,,	after bottom
.11,,,-.09,,	after bought far
.22,,,,,	after bought far comma
.19,,,,,	after bought far copula
.14,,,,,	after bought far modal
.18,-.16,.1,-.14,,	after bought far none
-.09,-.11,,-.14,,.15	after bought far past
,,,-.09,,.08	after bought far stop
,-.19,-.14,-.19,.24,-.1	after bought here
,-.19,-.1,-.19,.19,-.1	after bought here past
.14,-.12,-.13,-.14,,-.1	after bought here run-on
-.15,-.17,,-.23,.32,-.09	after bought sentence
-.13,-.21,,,.15,-.09	after bought sentence and
-.21,-.35,.11,-.37,.33,-.09	after bought sentence comma
.2,,,,,	after bought sentence copula
-.2,-.37,.11,-.38,.34,-.1	after bought sentence none
-.2,.11,-.32,,.13,-.16	after bought sentence past
.23,,,,-.1,	after bought sentence run-on
.19,-.11,,-.09,,	after bow
-.2,,,-.12,,.18	after box
.13,,,,,	after bracket
.33,-.14,-.1,-.11,,	after break
.26,,,-.09,,	after bubble
.12,,,,,	after bug
.17,,,,,	after bust
.33,-.19,-.2,-.14,,	after buzz
.2,-.12,,-.1,,	after call
,,,-.11,,	after can
.1,,,,,	after can't
.19,,,,,	after cap
.23,-.08,,,,	after catch
.09,,,,,	after caulk
,,.14,-.16,,	after ceiling
.17,,,-.09,,	after center
.18,-.1,,,,	after centre
.18,,-.12,-.11,,	after chatter
.22,,,,,	after check
,-.1,-.12,-.11,,.17	after chip
-.26,-.12,.22,,,.09	after clean
.15,,,,,	after clear
-.09,-.17,-.1,.18,,	after close
.23,-.19,,-.09,,	after closet
,,,,,.11	after come
.17,,,,,	after compact
,-.18,-.11,.16,,	after complete
.12,,,,,	after corner
.3,-.13,,-.13,,	after corridor
,-.28,.32,,,	after counter
,.21,-.13,-.08,,	after cover
-.16,,-.11,.09,,.11	after crack
.32,-.18,-.15,-.2,,-.1	after crook
.09,,,,,	after crown
.22,-.13,-.1,,,	after crush
,.18,-.18,-.18,-.09,	after cup
.1,,,,,	after cut
.08,,,,,	after cut out
.18,,,,,	after day
,.17,-.08,-.11,,	after dead
.22,-.11,,-.1,,	after deck
,,,.09,,	after deep
.26,-.13,-.12,-.17,,	after den
,-.17,-.16,-.15,.18,	after didn't
.15,,,,,	after dig
.14,.09,-.13,-.15,,	after dining room
,.08,,-.1,,	after do
,.12,-.1,-.12,,	after doesn't
,-.09,,,,	after don't
.1,,,,,	after drags
.25,,-.09,-.13,,	after drain
-.09,,,.16,,	after drill
.16,-.09,,,,	after drip
.34,-.23,,-.11,,	after drop
.18,,,-.1,,	after drum
.14,,,-.1,,	after dry
,-.08,,.09,,	after drywall
.15,.09,-.23,-.22,,	after dump
.19,-.08,,,,	after dust
,-.09,-.15,.19,,	after each
.09,.11,,-.12,,	after eat
.24,-.13,-.1,-.14,,	after edge
.11,,,,,	after electrician
.18,,,-.1,,	after em
.15,,,,,	after empty
,-.14,,.11,,	after end
.15,,,,,	after ends
.15,,,,,	after even
.13,-.08,,,,	after every
.21,-.13,,,,	after everything
.22,-.08,,,,	after everywhere
-.23,.11,.17,-.15,,	after extra
-.25,.27,,,,	after factory
.09,,,,,	after falls
-.09,.11,,,,	after fell off
,,,.16,,	after find
.09,,,,,	after fine
.19,,,,,	after finger
.18,,,,,	after fire
-.11,-.1,-.17,.2,,	after fireplace
-.18,-.14,-.09,.22,,	after fit
,.18,-.08,-.15,,	after flash
.27,-.18,-.15,-.17,,	after flat
.18,,,-.08,,	after flip
.27,,,-.09,,	after floor
.1,,,,,	after floors
.15,,,,,	after flush
.11,,-.11,,,	after foam
.09,.12,,-.09,,	after for
.24,,,,,	after frame
.18,,,-.15,,	after from
,-.14,,.14,,	after front
.13,,,,,	after gap
,,.18,-.17,,	after garage
.08,.1,,-.11,,	after get
,-.08,,.18,,	after glue
,,,.08,,	after go
,.11,-.08,,,	after gonna
.11,-.1,.09,-.09,,	after good
.12,,,,,	after gotta
.08,,,-.1,,	after gray
,,.09,,,	after grind
.27,-.22,,,,	after grout
.37,-.16,-.14,-.24,,-.09	after guy
.17,,-.12,,,	after half
.28,,-.08,-.16,,	after hall
.15,,,,,	after hall closet
.23,,-.14,-.15,,	after hallway
.19,-.09,,,,	after hand
,-.09,,.13,,	after hang
.09,,,,,	after has
.18,,-.09,,,	after have
.13,,,,,	after have far
,.18,-.09,-.1,,	after have far comma
.1,,,,,	after have far copula
.16,,,,,	after have far imperative
.14,.13,,-.19,,	after have far none
.2,,,,,	after have far past
.08,,,,,	after have far present
.13,,,,,	after have far stop
.2,-.09,,-.1,,	after have here
.14,,,-.09,,	after have here and
.1,,,,,	after have here comma
,-.11,.12,-.11,,	after have here copula
.15,-.13,,-.11,,	after have here none
.25,,-.16,,,	after have here past
,-.11,.13,-.12,,	after have here present
.23,,,-.08,,	after have here run-on
.12,-.17,.12,-.16,,	after have here stop
,-.08,.15,,,	after have here word
,.17,,-.11,,	after have sentence
,.18,,-.15,,	after have sentence and
-.23,.09,.21,-.23,,	after have sentence comma
,.16,,-.12,,	after have sentence copula
,.22,-.1,,,	after have sentence imperative
-.27,.36,-.15,-.12,,	after have sentence modal
-.14,-.19,.43,-.45,-.13,-.1	after have sentence none
-.23,.32,,,,	after have sentence owed
.46,-.15,-.4,,,	after have sentence past
.16,-.14,-.13,.11,,	after have sentence present
.13,,-.15,,,	after have sentence run-on
,.16,,-.14,,	after have sentence word
,,.1,-.08,-.09,	after he
,.11,,,,	after head
-.12,-.09,,.16,,	after her
,-.12,.26,-.16,,	after here
.17,,,,,	after high
.1,-.09,.1,-.11,,	after hinge
.23,-.13,-.14,,,	after his
.11,,,,,	after hold
.28,,,-.25,,	after hole
.28,-.12,-.13,-.19,,	after hollow
-.31,.2,.15,-.08,-.09,	after home
.13,,,,,	after homeowner
.17,,,,,	after hook
-.17,-.18,-.1,.22,-.08,	after hot
,.14,,-.11,,	after house
.15,,,,,	after hum
,.13,-.1,,,	after i'm
-.09,.11,,,,	after if
-.11,.1,,-.09,,	after inspector
.23,,,,,	after install
-.15,-.08,,-.1,,.22	after instead
-.16,,-.16,.22,,	after into
.09,,,,,	after is
-.11,.2,-.25,.16,,	after island
,.11,,,,	after it's
.23,,,,,	after its
-.19,.16,.13,-.16,-.09,-.13	after job
,-.15,-.09,,.15,-.09	after joint
.22,,,-.09,,	after keep
,,,.11,,	after kicks out
.15,,,,,	after kink
,,,.09,,	after kitchen
.14,,,,,	after label
-.17,,,.11,,	after land
.25,-.09,-.13,-.12,,	after lane
-.15,.08,.1,,,	after last
.16,,,,,	after latch
.31,,,-.22,,	after laundry
.21,,,-.09,,	after lay
.21,,,-.11,,	after leak
-.17,.15,,.08,,	after lean
,-.22,.14,-.23,,	after leaning
,,.18,-.09,,	after leave
,-.09,,,,	after let
.15,,,,,	after level
.12,,,,,	after lift
.12,,,,,	after like
.18,,,,,	after line
.28,-.09,-.12,,,	after live
-.15,-.09,,.21,,	after living room
,.15,-.15,-.1,,	after lock
.08,.11,,-.15,,	after long
.21,,,,,	after look
,-.19,.23,,,-.1	after loose
.2,,,,,	after lose
.2,,,,,	after low
.12,,,,,	after lower
,.1,,,,	after make
.21,,-.1,-.11,,	after mark
.33,-.17,-.22,-.1,,	after mask
.16,,-.09,,,	after maybe
-.11,,,,,	after me
.15,,,,,	after measure
,,,,,.13	after middle
.25,-.19,-.23,,,	after mind
-.15,.22,-.14,-.18,-.08,	after mine
,.16,,,,	after miss
.26,-.13,-.1,-.12,,	after miter
,.1,,,,	after more
-.22,-.1,,.32,,	after mount
.16,,,,,	after move
,-.15,.23,-.1,,	after my
.13,,,,,	after nail
.11,,,,,	after near
.11,,,-.1,,	after need
.1,,,,,	after need far
.29,-.12,,,,	after need far and
,,-.08,,,	after need far comma
.13,,,,,	after need far copula
,.12,,,,	after need far imperative
.29,-.14,,,,	after need far modal
.21,,,,,	after need far none
,.14,-.12,,,	after need far owed
-.13,-.1,,.14,,	after need far past
.11,,,,,	after need far present
.2,-.22,-.09,.08,,	after need far run-on
.09,,,,,	after need far stop
.27,-.1,,-.21,,	after need far word
,.13,,-.09,,	after need here
.09,,,-.08,,	after need here and
-.11,.18,,-.11,,	after need here comma
.1,,,-.1,,	after need here copula
.12,,,,,	after need here imperative
,.24,-.17,-.16,,	after need here none
,.17,,-.08,,	after need here owed
,.17,,-.22,,	after need here past
.13,,,,,	after need here present
.09,,,,,	after need here run-on
,.21,,-.1,,	after need here stop
.18,,,-.09,,	after need here word
,.12,,-.09,,	after need sentence
,.25,-.09,-.17,,	after need sentence and
,.26,,-.24,,	after need sentence comma
.12,,,,,	after need sentence copula
.15,-.12,.1,-.09,,	after need sentence imperative
.21,,-.1,,,	after need sentence modal
-.26,.64,-.14,-.3,,	after need sentence none
.41,-.33,,,,	after need sentence owed
-.21,-.25,.29,,.09,	after need sentence past
-.17,.15,,.1,,	after need sentence present
.43,-.28,,,,	after need sentence word
.19,-.17,-.21,.13,,	after never
.13,,,,,	after new
-.19,.1,.15,-.08,,	after next
.13,-.17,,,,	after no
.12,,,,,	after nobody
.3,-.13,-.17,-.1,,	after none far and
,.18,,-.1,,	after none far comma
.11,,,,,	after none far imperative
,.13,,,,	after none far modal
.08,,.09,-.11,,	after none far none
-.09,.25,,,,	after none far owed
.15,-.09,,,,	after none far past
.16,,,,,	after none far present
.27,,-.12,,,	after none far run-on
.09,,,,,	after none far stop
.08,-.19,.12,,,	after none far word
-.1,,.14,,,	after none here and
,,.11,-.12,,	after none here comma
-.12,.14,,,,	after none here imperative
-.2,.18,-.12,,,	after none here modal
.13,,,-.14,,	after none here none
.09,-.11,.09,,,	after none here owed
.29,,-.15,,,	after none here present
.17,,,,,	after none here run-on
.25,,,-.11,,	after none here start
.13,,,,,	after none sentence and
.2,,-.09,,,	after none sentence comma
,.18,-.1,-.09,,	after none sentence imperative
,,,-.11,,	after none sentence modal
,,-.11,,,	after none sentence none
.15,,,,,	after none sentence owed
.09,,,,,	after none sentence past
.09,,,,,	after none sentence present
,-.24,-.22,-.2,.25,	after none sentence stop
,.11,,,,	after none sentence word
,-.14,,.18,,	after noon
.19,,-.09,-.09,,	after north
,.1,,,,	after not
-.12,.21,-.21,-.13,-.09,	after notch
,.11,,,,	after nothing
,,,.13,,	after now
.19,-.1,,-.08,,	after number
.18,-.08,,,,	after off
.15,,,,,	after old
.09,.09,,-.14,,	after once
-.33,.24,.11,,-.09,-.09	after ones
.21,,,,,	after open
,.14,,-.09,,	after opened up
.25,-.13,,,,	after or
-.28,,-.09,-.21,.37,	after order
-.13,.1,,,,-.1	after other
,.11,,-.13,,	after our
.13,,,,,	after out
.09,,,,,	after out of plumb
.18,,,,,	after outside
.14,-.09,,,,	after over
.2,,-.11,-.11,,	after owner
,,,-.11,.18,	after pack
,,-.1,-.11,,	after pantry
.1,,,,,	after part
.2,-.1,,,,	after past
.21,-.1,,,,	after peel
,,-.1,.16,,	after piece
.17,,,,,	after pipe
-.18,-.11,,.17,,	after pitch
.19,,,,,	after place
,-.17,-.1,.1,,	after plane
.26,-.2,,,,	after plate
,.1,-.13,-.2,,	after please
-.15,-.12,.19,-.09,,	after plus
,-.08,.1,-.12,,	after porch
.16,,,,,	after pour
.18,,,-.09,,	after powder room
.12,,,,,	after proud
.09,,,,,	after pull
-.14,.13,-.15,.13,,	after put
,-.08,,.18,,	after rack
,,,.1,,	after rain
,.11,,,,	after read
.18,,,,,	after ready
-.21,-.17,.26,-.11,,	after real
-.24,,-.11,.25,-.09,-.09	after replace
.27,-.19,,-.09,,	after require
.12,,,,,	after return
,,.13,,,	after returned far
,.17,,,,	after returned far owed
.12,-.1,-.1,,.08,	after returned far past
-.16,,.16,,,	after returned far stop
.32,,,-.13,,	after returned here
.29,,,-.16,,	after returned here copula
.26,,,,,-.1	after returned here past
.21,,,-.14,,	after returned here start
,.2,,,,	after returned sentence
-.19,.27,,,,	after returned sentence and
.14,,,,,	after returned sentence copula
,.08,,,,	after returned sentence run-on
.13,,,,,	after rip
.17,,,,,	after roof
.1,,,,,	after room
-.11,.13,,.09,,	after rot
-.29,,,.17,,.18	after rough opening's
,,.08,-.16,.09,	after run
.15,,,,,	after sag
.08,,,,,	after sand
.12,,,,,	after say
.22,-.09,,,,	after scrap
.2,,,-.08,,	after scrape
.21,-.24,-.21,-.2,,.12	after scratch
.11,,,,,	after screw
.24,-.09,,,,	after scribe
.21,-.19,-.13,,,	after seal
,,,.1,,	after second
.11,,,,,	after second coat
.24,-.11,-.12,-.13,,-.09	after see
,.12,,,,	after send
.2,-.09,,,,	after set
-.26,-.22,.26,,,	after shed
-.12,-.11,,.2,,	after sheets
-.11,.22,,-.11,,	after shim
-.35,.15,.11,,,.19	after shop
,.12,-.1,,,	after short
.18,,,,,	after shot
-.09,.15,-.1,-.09,,	after should
,,,.15,,	after side
.18,,,,,-.12	after silicone
,-.1,.21,,,	after sit
-.18,,.23,-.27,-.11,-.09	after site
.2,,,-.08,,	after size
.09,,,,,	after slide
-.26,.34,-.24,-.23,-.1,-.08	after snap
,.15,,-.08,,	after snug
.16,,-.11,,,	after so
.14,,,,,	after soft
.13,,,,,	after spare
,,-.14,,,	after split
.23,,,-.09,,	after spray
,-.1,-.24,.19,,	after stack
-.37,.28,,.09,,.13	after stain
.1,,,,,	after stair
.15,,,,,	after stairs
.13,,,,,	after staple
.23,-.09,,,,	after start
,.13,,,,	after stay
.14,,,,,	after stick
-.13,-.15,.17,.11,,	after still
-.21,,.18,,-.08,	after stop
-.14,-.15,-.08,-.1,.22,-.18	after store
.23,,,-.11,,	after street
,-.11,-.11,.12,,	after stretch
.27,-.14,-.11,-.12,,	after strike
,,.1,-.16,,	after strip
-.08,-.15,,.15,-.1,	after supply
,,,.08,,	after swap
.19,,-.09,,,	after tacky
,.14,,-.13,,	after take
.1,,,,,	after tall
-.2,.17,.14,,,	after tape
.14,,,,,	after tear
-.28,-.1,-.1,.31,,	after tell
.28,-.09,,-.09,,	after template
.24,-.08,,,,	after test
.22,,,,,	after than
,,.11,,,	after that
.18,,,,,	after the kids
-.15,.19,,,,	after the wrong
,-.21,.18,-.25,,	after their
-.13,.12,-.17,,,	after them
.23,-.09,,-.08,,	after then
,.12,,-.14,,	after they
.21,-.11,,,,	after they're
,.15,,-.11,,	after thick
.33,,-.12,-.21,,	after thing
.22,,,-.1,,	after think
.12,-.12,,,,	after third
.19,,-.1,,,	after those
-.18,.23,,-.08,,	after though
.15,,,,,	after through
.19,,,,,	after til
.2,,,,,	after tile
.17,-.18,,.09,,	after till
.15,-.08,,,,	after time
.15,,,,,	after to
.1,,,-.08,,	after too
.29,-.24,,-.11,,	after too high
.29,-.16,,-.14,,	after too short
.17,-.08,,,,	after touch
-.11,-.09,,.14,,	after toward
-.33,-.33,.27,,-.12,-.09	after trailer
-.14,.18,,,,	after trim
.19,,,,,	after trip
,,.15,-.12,,	after turn
.18,,,-.11,,	after under
.21,,,,,	after underneath
.27,-.13,,,,	after until
.09,,,,,	after up
.09,,,,,	after upstairs
.11,,,,,	after us
,-.15,-.11,.17,,	after use
.17,,,,,	after used far and
,,,-.12,,	after used far comma
.22,,,,,	after used far copula
-.16,.28,-.1,,,	after used far imperative
.24,-.09,-.1,,,	after used far modal
,.09,,,,	after used far none
,.12,-.12,-.13,,	after used far owed
,-.18,,.11,,	after used far past
,-.17,.1,-.08,.09,	after used far present
.14,,,,,	after used far run-on
.08,-.18,,.1,-.1,	after used here
,-.14,-.14,,-.25,.18	after used here and
.14,-.17,,,,	after used here comma
-.23,,-.1,.26,,	after used here copula
,-.26,,,,-.09	after used here none
.26,-.13,,-.13,-.13,	after used here past
.1,-.16,,,,	after used here run-on
,,,-.21,,.2	after used here start
.12,-.25,-.11,,,	after used here stop
-.16,-.18,.1,.17,,	after used here word
,-.08,,.13,,	after used sentence and
,-.12,,,,	after used sentence comma
.11,,,,,	after used sentence copula
.12,,-.19,,,	after used sentence imperative
,.11,,-.15,,	after used sentence modal
,-.09,,.12,-.08,	after used sentence none
,.09,-.09,-.11,,	after used sentence owed
,-.1,.16,,,	after used sentence past
,,.14,-.11,,	after used sentence present
.13,,,,,	after used sentence run-on
,.24,,-.13,,	after used sentence word
,-.16,-.09,-.09,.14,-.08	after vent
.29,-.17,-.14,-.09,,	after wait
.21,,-.1,-.11,,	after walk
.13,,,-.11,,	after wall
.11,,,,,	after walls
-.1,,,.13,,	after water
,,-.11,-.23,.12,	after way
.12,,,,,	after we
.17,,,,,	after weep
,,.08,,,	after well
-.25,.19,-.15,,,.12	after were
.25,,,-.12,,	after wet
.18,,,,,	after what
.09,,,,,	after when
.22,,,,,	after where
.14,,-.08,,,	after which
-.15,,-.13,,,.14	after white
.13,,,,,	after wide
-.29,,,.17,,.18	after width
.17,-.08,,,,	after will
,-.18,-.12,.2,,	after wire
.11,,-.1,-.11,,	after without
.2,,,,,	after wobble
.3,-.09,-.1,-.11,,	after won't
,.13,-.14,-.13,,	after wrap
,-.1,.12,,,	after x
.21,,,,,	after yet
.2,,,,,	after you
.22,,-.09,,,	after your
,-.22,.17,,-.4,-.11	again bought
.13,,-.16,,,	again have
.35,-.43,.1,-.22,,.11	again need
.1,,,,,	again none
,.24,,-.19,,	again returned
,,.3,-.38,,	again used
.25,-.09,,-.11,,	ahead #
-.28,.31,-.09,-.1,,-.08	ahead &
.24,,,-.16,,	ahead '
-.12,,-.16,,-.09,.14	ahead (
-.1,,-.09,.16,,	ahead +
.23,,,,,	ahead -
.2,-.09,,,,	ahead /
.19,-.08,,,,	ahead 1
-.12,-.1,,.21,,	ahead 3
.33,-.09,,-.16,,	ahead @
.1,,,,,	ahead G
.13,,,,,	ahead N
.09,,,,,	ahead Q
.08,,,,,	ahead a
.1,,,,,	ahead about
.16,,,,,	ahead above
-.12,.22,-.1,-.23,,	ahead across
.09,,,,,	ahead add
.18,,,,,	ahead after
-.29,-.14,,.32,,	ahead again
.21,,,-.1,,	ahead air
,,,.1,,	ahead all
.13,,,,,	ahead along
-.1,-.15,.15,.12,-.13,	ahead already
,,,.12,,	ahead an
-.27,-.08,.14,,.14,	ahead another
.14,,,,,	ahead anybody
.18,,-.1,,,	ahead anyhow
.11,,,,,	ahead apartment
-.11,,,.23,,	ahead are
.17,,,,,	ahead around
-.21,.16,.18,-.17,,-.09	ahead arrive
.25,-.11,,-.09,,	ahead as
.19,,,,,	ahead ask
.16,,,,,	ahead at
,,,.16,,	ahead attic
.19,,,-.11,,	ahead away
-.16,.2,,,,	ahead backsplash
.25,,,-.15,,	ahead bad
.19,,,,,	ahead bag
.22,,,-.08,,	ahead basement
.11,,,,,	ahead basement's
.11,,,,,	ahead bath
.16,,,-.08,,	ahead bathroom
.21,,,-.1,,	ahead bay
.11,,,,,	ahead be
.11,,,,,	ahead bedroom
.17,-.17,,,,	ahead before
.15,,,-.08,,	ahead behind
.19,,,,,	ahead below
.12,,,,,	ahead bend
.31,-.14,,-.1,,	ahead between
,,-.12,.08,,	ahead big
.14,,,,,	ahead black
,-.09,,.12,,	ahead block
,-.09,,,,	ahead blow
-.15,,.2,-.13,,	ahead board
,.11,,,,	ahead bolt
-.1,.18,-.12,-.13,,	ahead bond
.29,-.13,,-.17,,	ahead both
.26,,,-.14,,	ahead bottom
.13,,,,,	ahead bow
.08,,,,,	ahead bowl
.24,,-.15,-.1,,	ahead box
,.13,-.13,-.14,,	ahead bracket
-.1,.19,,-.14,,	ahead break
,.1,,,,	ahead bring
-.14,-.11,,.25,,	ahead burn
,,-.13,-.21,.11,	ahead buy
.13,,,,,	ahead by
.2,,,,,	ahead c
.18,-.11,-.11,,,	ahead call
,.1,,,,	ahead can
.15,,-.09,,,	ahead can't
-.19,,-.09,.26,,	ahead cap
,.09,,,,	ahead carpenter
.11,,,,,	ahead catch
,.09,,,,	ahead caulk
,.14,,-.17,,	ahead ceiling
.19,,,,,	ahead center
-.17,,-.12,.26,,-.08	ahead change
.11,,,,,	ahead check
-.1,,,.18,,	ahead chip
-.12,.16,,,,	ahead chuck
.14,,,,,	ahead circuit
,.11,,-.16,,	ahead clean
-.08,,,.15,,	ahead clear
.09,,,,,	ahead clearance
.24,,,,,	ahead close
.2,,,,,	ahead closet
.22,-.21,,,,	ahead code
,-.16,,.18,,	ahead corner
.09,.23,,-.25,,	ahead could
-.1,-.13,,.15,,.11	ahead count
.16,,,-.18,,	ahead cover
.18,-.19,-.09,-.12,.11,	ahead crown
,-.09,,,,	ahead cut
.21,-.16,,,,	ahead dad
.24,-.09,-.08,,,	ahead day
.26,-.13,,,,	ahead dead
.17,,,,,	ahead deck
.21,-.09,,-.09,,	ahead deep
-.19,.24,-.09,-.21,,	ahead den
.32,-.16,,-.13,,	ahead dig
.18,,,-.1,,	ahead ding
,.1,,,,	ahead dining room
,-.1,.15,-.09,,	ahead don't
.25,-.15,,,,	ahead drain
.12,.11,-.13,-.23,,	ahead draw
.23,,,-.15,,	ahead drill
.3,-.2,,,,	ahead drip
.24,,,-.09,,	ahead drop
-.13,.23,-.08,-.23,,	ahead dry
.12,,,-.08,,	ahead drywall
.1,,,,,	ahead dump
.3,-.13,,-.23,,	ahead each
-.14,-.33,-.21,.39,,	ahead eat
,.18,,-.09,,	ahead electrician
.2,.11,-.09,-.22,,	ahead em
.19,,,-.15,,	ahead empty
-.19,-.17,.26,,,	ahead enough
-.1,-.15,,.16,,	ahead even
,,-.1,,,	ahead every
-.11,,-.1,.18,,	ahead everything
.16,,,,,	ahead except
.22,,,-.1,,	ahead exterior
.1,-.25,,.14,,	ahead extra
,.1,-.16,-.13,,	ahead falta
-.22,,,.12,,.17	ahead far
.23,-.11,,-.1,,	ahead feel
,.16,-.13,-.19,,	ahead figure
.11,,,,,	ahead find
.15,-.12,,,,	ahead fine
.14,,,,,	ahead finish
.11,,,,,	ahead first
.18,-.09,,,,	ahead first fix
.21,,-.09,-.18,,	ahead flash
-.2,.27,-.09,-.21,,	ahead flat
,-.14,-.08,.11,,	ahead float
.19,,,,,	ahead floor
,-.13,-.1,.14,,	ahead floor's
,.09,-.12,-.13,-.08,	ahead flush
,-.11,-.15,.16,,	ahead foam
.17,-.09,-.1,-.13,,	ahead footings
.13,,,-.11,,	ahead for
-.15,.22,-.19,-.17,-.14,-.1	ahead forget
.13,,,,,	ahead foyer
.18,-.09,,,,	ahead frame
,-.14,.22,-.29,-.11,-.09	ahead fre
,-.23,.13,-.12,,	ahead fresh
.15,,,,,	ahead from
-.14,-.17,-.08,.2,,	ahead front
.23,,,-.15,,	ahead front room
.23,-.12,,-.15,,	ahead full
.09,,,,,	ahead gap
,-.11,-.08,,,	ahead garage
.22,,-.11,-.11,,	ahead give
,-.15,,.13,,	ahead glue
,,,-.12,,	ahead gonna
.28,-.14,-.09,,,	ahead good
,,,-.09,,	ahead grab
,-.1,-.09,,,	ahead grind
-.11,.2,-.1,-.17,,	ahead guess
.29,,,-.12,,	ahead half
.09,-.09,,,,	ahead hall
,,.18,-.09,,	ahead hall bath
.25,,,-.15,,	ahead hand
-.14,,,.2,,	ahead hang
.16,,,,,	ahead has
,-.08,.14,,,	ahead have
.22,,,,,	ahead he
,,,-.09,,	ahead he'll
,.09,,,,	ahead he's
,.09,,,,	ahead head
.15,,,,,	ahead headroom
.19,-.1,,-.12,,	ahead height
.18,-.09,,-.08,,	ahead height's
.15,,,,,	ahead hendersons
,-.1,.13,,,	ahead her
.13,-.09,.1,-.13,,	ahead here
,-.17,.22,-.2,,	ahead him
,.13,,,,	ahead hinge
,-.22,,.18,,	ahead his
.08,,,,,	ahead hit
,-.11,,,,.08	ahead hold
.16,,,-.09,,	ahead hole
-.14,,,.19,,	ahead holes
.27,-.14,,,,	ahead homeowner
,-.25,-.09,.13,,	ahead hook
.09,,,,,	ahead hot
,,,,,.09	ahead house
-.17,.21,,,,	ahead how
.09,,,,,	ahead hump in
,.12,-.1,-.12,,	ahead i'd
.1,,,,,	ahead i'll
,,.09,-.14,,	ahead i'm
-.12,-.11,.16,,,	ahead i've
,,-.08,,,	ahead if
.11,,,,,	ahead in
.22,-.13,-.11,,,	ahead inspector
.15,,,,,	ahead into
.11,,,,,	ahead is
.09,,,,,	ahead it
.08,,-.1,.12,,	ahead it's
,.16,,-.1,,	ahead its
-.15,-.22,-.14,.32,,	ahead job
.11,,,,,	ahead joint
.13,-.14,.08,,,	ahead just
.13,-.08,,,,	ahead keep
-.23,.14,-.09,.18,,	ahead kit
,.11,,-.1,,	ahead kitchen
.18,,,,,	ahead ladder
,-.1,-.13,,,-.09	ahead lag
-.16,,,.1,,.15	ahead lake
.21,,,-.09,,	ahead land
.17,-.14,,,,	ahead last
,.18,,-.15,,	ahead laundry
,,,.16,,	ahead lay
,,.09,,,	ahead leak
.09,,.09,-.1,,	ahead leave
-.11,,.17,,,	ahead let
.13,,,,,	ahead let go
.17,-.09,,,,	ahead level
.18,-.18,-.12,.1,,	ahead like
.15,,,,,	ahead line
.22,-.09,,-.08,,	ahead living room
-.11,.19,,,,	ahead long
.17,,,,,	ahead look
.25,-.1,,,,	ahead lose
,-.19,,-.23,,.21	ahead lot
.17,,,,,	ahead lower
.21,,,-.14,,	ahead mark
.12,,-.11,,,	ahead master bath
-.28,.12,.21,-.16,,	ahead maybe
,.16,,,,	ahead me
,.17,,-.12,,	ahead measure
.16,,,,,	ahead mind
,.23,,-.11,,	ahead miss
.15,,,,,	ahead mold
.12,,,,,	ahead more
.2,,,,,	ahead mount
,-.17,,.11,,	ahead mrs
.19,-.09,,,,	ahead mud
.13,,,,,	ahead mudroom
.21,,,-.15,-.09,	ahead must
.12,,-.09,-.15,,	ahead my
.12,-.15,,.09,,	ahead nail
,.2,,-.08,,	ahead need
-.16,.2,,,,	ahead new
.21,-.13,,-.09,,	ahead niche
.23,,,-.11,,	ahead nick
.25,,,-.1,,	ahead nobody
,.1,,-.1,,	ahead not
.24,,,-.1,,	ahead notch
-.14,.12,.1,,,	ahead nothing
,-.13,,.16,,	ahead now
.13,,,,,	ahead number
.15,,,,,	ahead off
.19,,,,,	ahead office
-.12,,,.17,,	ahead okafor's
.24,-.09,,,,	ahead old
.15,,,,,	ahead on
.23,-.09,,,,	ahead once
.33,-.13,-.1,-.11,,	ahead one's
.19,-.12,,,,	ahead ones
,-.18,.21,-.09,,	ahead only
.2,,,,,	ahead open
.25,-.14,,,,	ahead opened up
.2,,,,,	ahead opening's
.1,,,,,	ahead or
-.16,.25,-.11,-.15,,	ahead order
,-.3,.2,-.32,-.09,-.1	ahead other
.08,,,,,	ahead out
.22,-.13,,,,	ahead out of plumb
.11,,,,,	ahead over
-.08,.14,-.23,-.23,.12,-.1	ahead owe
,,,.1,,	ahead pack
.13,,,-.08,,	ahead paint
.22,-.09,,,,	ahead painter
.2,,,-.08,,	ahead pantry
.2,,,,,	ahead pass
,.12,,-.16,,	ahead past
.22,,,-.1,,	ahead patch
.19,,-.09,-.12,,	ahead peel
-.09,.15,-.12,-.21,.17,	ahead pick
.18,,,-.11,,	ahead piece
-.11,-.1,.17,-.2,,	ahead pile
-.12,-.21,.09,.22,,	ahead pipe
.15,,,,,	ahead place
.12,,,,,	ahead plaster
-.13,,.2,,,	ahead please
,,,.12,,	ahead plumber
-.09,,.11,-.1,,	ahead plus
.15,,,,,	ahead pool
.28,-.09,-.1,-.12,,	ahead pop
,.1,,,,	ahead porch
.09,,-.23,,,-.08	ahead pour
.12,,,,,	ahead powder room
.13,,,,,	ahead pressure
,.09,,,,	ahead prime
.2,,,,,	ahead pull
.18,,,,,	ahead push
-.09,,,.19,,	ahead put
.33,-.11,-.09,-.2,,	ahead quick
,-.1,-.16,-.18,,.18	ahead rain
.29,-.15,,-.11,,	ahead read
,,,-.11,,	ahead red
,-.08,-.13,,,	ahead replace
.11,,,,,	ahead reset
-.26,-.23,.21,-.21,,.16	ahead rest
-.18,-.15,-.19,-.22,-.12,.3	ahead return
,.12,-.08,,,	ahead right
.22,,,,,	ahead ring
.14,-.15,.08,-.08,,	ahead rip
.16,,,,,	ahead rm
.27,,,-.14,,	ahead roll
.2,,,,,	ahead room
.12,,,,,	ahead rot
,.15,-.18,-.26,,	ahead rotten
.14,-.09,,,,	ahead run's
.1,,,,,	ahead sag
.13,-.09,,-.12,,	ahead sand
.15,,,,,	ahead scrape
-.09,,.2,,,	ahead scratch
-.19,.17,-.14,.14,,	ahead screw
.13,,,-.11,,	ahead scribe
-.21,,,.27,,	ahead seal
.15,,,,,	ahead seam
.19,,,-.11,,	ahead second coat
,,.16,,,	ahead second floor
.15,,,,,	ahead see
-.17,.13,-.09,-.15,-.08,.21	ahead send
,,-.12,,,	ahead set
.17,,,,,	ahead shave
.28,,,-.2,,	ahead she
,.08,,,,	ahead she's
,.12,-.14,-.21,,	ahead sheath
,-.16,-.09,.14,,	ahead shed
.26,-.12,,-.19,,	ahead shim
.22,,,,,	ahead shop
-.21,.37,,-.18,,	ahead short
,-.16,-.1,.11,,	ahead should
-.35,.31,-.28,,,	ahead shy
.08,,,,,	ahead side
-.26,,.21,.09,,	ahead sign
.14,,,,,	ahead silicone
,,-.09,,,	ahead sister
.15,-.09,,,,	ahead sit
.1,,,,,	ahead size
.16,,,,,	ahead skim
,-.13,-.09,.15,,	ahead skirt
.09,,,,,	ahead slab
.11,,,,,	ahead slab's
.11,,,,,	ahead slip
.21,,,-.12,,	ahead slope
.27,,,-.2,,	ahead snake
.31,-.2,-.09,-.24,,	ahead snap
-.1,,,.12,,.1	ahead so
,,,,,.14	ahead soft
,-.12,-.14,.16,,	ahead solid
,.13,,-.1,,	ahead some
,,,-.14,,	ahead somebody
.27,-.11,-.1,,,	ahead somebody's
.36,-.27,-.15,-.23,-.09,	ahead sound
-.11,.15,,,,	ahead sparky
.28,-.17,-.13,-.1,,	ahead splash
.22,-.09,,,,	ahead split
.12,,,,,	ahead spot
,-.22,-.09,.27,,	ahead stack
.14,,,-.13,,	ahead stain
-.1,.19,,,,	ahead stair
-.28,,,.34,,	ahead stairs
.17,,,,,	ahead stand
.15,,,,,	ahead start
.21,,,-.08,,	ahead static
.17,,,,,	ahead stay
,,,-.11,,	ahead still
.17,,,,,	ahead stop
-.21,.12,.2,-.12,,	ahead supplier
.19,-.1,,,,	ahead supposed
,-.12,,.2,,	ahead swap
,-.13,,.17,,.08	ahead take
.15,-.09,,,,	ahead tall
.37,-.21,-.11,-.24,,	ahead tap
,.16,-.21,-.13,,	ahead tape
.17,,,,,	ahead tear
.25,-.08,,-.14,,	ahead tell
.22,-.09,-.11,-.1,,	ahead temp
.14,,,,,	ahead test
.17,,,,,	ahead than
,,,.2,,	ahead that
.1,-.19,-.1,.19,,	ahead that's
.1,,,,,	ahead the
.19,,,,,	ahead the lab
,,.17,-.1,,	ahead the lady
.11,,,,,	ahead the wrong
,,-.18,-.17,.15,	ahead them
.17,,-.09,,,	ahead then
.16,-.09,,-.08,,	ahead there
,-.09,.18,-.11,,	ahead there's
.19,,-.11,-.14,,	ahead they
.16,,-.1,-.09,,	ahead they're
.09,-.25,,.14,,	ahead thick
.29,-.13,,-.12,,	ahead thing
,-.1,.12,-.11,,	ahead think
.24,-.11,,,,	ahead this
,-.14,,.26,,	ahead through
-.14,,-.11,,.14,	ahead throw
.12,,,-.1,,	ahead tile
-.12,,,.1,,	ahead till
.11,,,,,	ahead to
.17,,,,,	ahead too
,.18,,-.18,,	ahead top
.14,,,-.09,,	ahead toward
.24,,-.11,,,	ahead trim
,-.09,.1,-.2,-.12,-.13	ahead try
,-.17,-.14,.19,,	ahead turn
.15,-.14,,,,	ahead under
.21,,,,,	ahead underneath
.2,,,,,	ahead upstairs
,.15,,,,	ahead us
,,-.08,.24,,	ahead use
,.09,,,,	ahead wait
.3,-.2,,,,	ahead walk
,,,,.11,	ahead wall
.15,,,,,	ahead wall's
.2,,,-.14,,	ahead walls
.11,,,,,	ahead want
,-.09,,,,	ahead water
,,-.2,.15,,	ahead way
.09,,,,,	ahead we
,.14,,-.11,,	ahead we're
.14,,,,,	ahead weep
,.19,-.12,-.14,,	ahead well
.24,-.15,,,,	ahead were
.14,,,,,	ahead what
.24,-.08,,,,	ahead when
.09,,,,,	ahead where
.21,-.08,,,,	ahead whether
,.09,,,,	ahead which
,,.16,,,	ahead whole
.25,-.11,,-.14,,	ahead wide
-.25,.35,,-.12,,	ahead will
.32,-.1,,-.19,,	ahead wire
-.09,,,.21,,	ahead with
-.26,.21,.18,-.18,,-.09	ahead without
.31,-.11,,-.11,,	ahead won't
.26,-.15,,-.1,,	ahead would
-.09,.09,.15,-.2,,	ahead wrap
,.24,-.14,-.28,,	ahead x
.26,,,-.17,,	ahead you
.14,,,,,	ahead your
-.51,,,,,	any
,-.17,-.09,.11,,	area cue used
.14,-.25,-.13,,,	area flawed
-.2,-.24,-.24,.35,-.09,-.1	area left #
.22,,-.12,-.36,,	area left about
.12,,-.23,,,	area named before material
-.2,,-.1,.23,,	area null none no
-.3,.16,-.09,.24,-.08,	area right #
-.2,,-.1,.23,,	area says none no
.14,-.31,-.13,,-.09,-.09	area says past behind
.11,,-.25,,-.09,-.09	area sold so false
-.2,,-.1,.23,,	area verb null no
.21,,,,,	bare after bought far
,,,-.12,.17,	bare after bought here
.33,,,,-.12,	bare after bought sentence
.22,-.11,,,,	bare after have far
.19,,-.09,,,	bare after have here
.17,,-.09,,,	bare after have sentence
.11,,,,,	bare after need far
.2,,,,,	bare after need here
.17,,,,,	bare after need sentence
.16,,,,,	bare after none far
.11,,,,,	bare after none sentence
-.09,-.09,.2,,,	bare after returned far
.19,,,,,	bare after returned here
.14,,,,,	bare after returned sentence
.15,,,,,	bare after used far
.16,,,,,	bare after used here
.15,,,-.09,,	bare after used sentence
,,,,-.1,	bare buy imperative behind
.41,-.2,,,-.3,-.08	bare buy past behind
.25,,,,-.08,	bare cue bought
.12,,,,,	bare cue have
.13,,,,,	bare cue need
.12,,,,,	bare cue used
.09,,,,,	bare flawed
.17,,,,,	bare have imperative behind
.1,,,,,	bare have present before
.14,,,,,	bare have present behind
.15,,,,,	bare left #
,-.15,-.09,-.16,.17,	bare left +
.22,,,,,	bare left /
.18,,,,,	bare left @
.18,,,,,	bare left G
.3,-.18,,,,	bare left Q
.21,,,,,	bare left T
.19,,,,,	bare left a
.18,,,,,	bare left about
.15,,,,,	bare left above
.16,,,,,	bare left after
.13,,,,,	bare left along
.14,,,-.09,,	bare left and
.16,,,,,	bare left are
.18,,,-.08,,	bare left around
.14,,,,,	bare left at
.15,,,,,	bare left back
.29,,,,,	bare left be
.26,-.11,,,,	bare left before
.14,,,,,	bare left behind
.11,,,,,	bare left below
.1,,,,,	bare left between
.17,,-.1,,,	bare left bring
.15,,,,,	bare left by
.16,,,,,	bare left can
.18,,,,,	bare left can't
-.37,.3,,.17,,	bare left change
.23,,-.09,,,	bare left check
.12,,,,,	bare left close
.2,,,-.1,,	bare left cut
.11,,,,,	bare left dining room
.3,-.1,,-.08,,	bare left do
.18,,,,,	bare left down
.09,,,,,	bare left drop
.17,,,,,	bare left each
-.17,.21,,,,	bare left em
-.12,,,.18,,	bare left every
.15,,,,,	bare left except
.13,,,,,	bare left finish
.17,-.09,,,,	bare left for
,,,-.09,,	bare left get
.19,-.1,,,,	bare left gonna
.21,,,,,	bare left gotta
.14,,,,,	bare left hall
.26,-.08,,-.18,,	bare left hang
.18,,,,,	bare left has
.3,,-.15,,,	bare left have
.17,,,,,	bare left hit
.18,,,,,	bare left i
.16,,,,,	bare left i'll
.17,,,,,	bare left if
.13,,,,,	bare left in
.16,,,-.08,,	bare left into
.18,,,,,	bare left is
.14,,,,,	bare left it
,-.13,.11,.08,,	bare left it's
,.18,,,,	bare left its
.15,,,,,	bare left just
.19,-.1,,,,	bare left keep
,.13,,,,	bare left kitchen
.18,,,,,	bare left leave
.18,,,,,	bare left let
.11,,,,,	bare left like
.14,,,,,	bare left living room
.14,,,,,	bare left lose
.17,-.09,,,,	bare left make
-.15,.18,,,,	bare left me
.33,-.2,,,,	bare left miss
.17,,,,,	bare left move
.31,-.28,,,,	bare left need
.23,-.13,,,,	bare left not
,-.08,.16,-.09,,	bare left now
.15,,,,,	bare left on
.2,-.08,,,,	bare left once
.29,-.15,-.12,,,	bare left only
.17,,,,-.2,-.08	bare left order
.2,,,-.08,,	bare left out
.12,,,,,	bare left over
.21,,,,,	bare left pass
.15,,,,,	bare left pull
,.18,,,,	bare left put
.2,-.1,,,,	bare left say
.13,,,,,	bare left see
.15,,,,,	bare left so
.14,,,,,	bare left start
.25,,,-.13,,	bare left swap
,,-.09,-.11,,.14	bare left take
.11,,,,,	bare left than
.12,,,,,	bare left that
.19,-.18,-.09,.08,,	bare left the
.25,-.14,,,,	bare left there
.19,,-.1,,,	bare left there's
.21,,,,,	bare left to
.14,,,,,	bare left under
.12,,,,,	bare left until
.2,,,,,	bare left up
,.09,,,,	bare left want
.15,,,,,	bare left we
.11,,,,,	bare left when
.16,,,,,	bare left where
,,,.15,,	bare left with
.19,,,,,	bare left won't
.1,,,,,	bare left you
-.15,.18,,,,	bare list need
.15,,,,,	bare measure owed behind
,,,,,.13	bare measure past before
,,,.14,,	bare measure past behind
.17,,,,,	bare measure present before
.13,,,,,	bare measure present behind
,-.13,.15,,,	bare more
,.12,,,,	bare move imperative behind
.13,,,,,	bare move modal before
.11,,,,,	bare move modal behind
.17,,,,,	bare move owed behind
.1,.12,-.2,,,	bare move past before
.33,-.09,,-.13,,	bare move past behind
.24,,,,,	bare move present before
.12,,,,,	bare move present behind
.1,,,,,	bare name flawed
.08,,,.08,,	bare named here area
.12,,,,,	bare named here defect
.17,,,-.09,,	bare named here finish
.17,,,,,	bare named here fixture
.13,,,,,	bare named here material
.12,,,,,	bare named here part
.29,-.1,,,,	bare named here role
.17,,,,,	bare named here surface
.09,,,,,	bare named here tool
.21,,,,,	bare named here word
.27,,-.1,,,	bare named here work
.39,-.17,-.08,-.18,,	bare nameless
-.14,.1,.14,,,	bare need modal behind
.14,,,,,	bare need owed before
.17,,,,,	bare need owed behind
.3,-.23,,,,	bare need past before
.33,-.26,,,,	bare need present behind
,,.08,,,	bare not ahead
.15,,,,,	bare null copula before
.14,,,,,	bare null copula behind
.16,,,,,	bare null imperative behind
.16,,,,,	bare null modal before
.32,-.1,,-.09,,	bare null modal behind
.17,,,,,	bare null none no
.14,,,,,	bare null owed before
.3,-.15,,,,	bare null owed behind
.12,,,,,	bare other copula before
.12,,,,,	bare other copula behind
.21,,,,,	bare other imperative behind
.37,-.17,-.09,,,	bare other modal before
.17,-.12,,,,	bare other modal behind
.25,-.13,,,,	bare other owed behind
.19,,,,,	bare other past behind
.2,,,,,	bare other present before
.21,,,,,	bare other present behind
.16,,,,,	bare right #
.24,-.32,,-.15,.15,	bare right +
.44,-.23,,-.22,,	bare right /
.32,-.15,,-.09,,	bare right @
.24,,,,,	bare right Q
.19,,,,,	bare right T
.19,,,,,	bare right a
.11,,,,,	bare right about
,-.1,.15,,,	bare right after
.13,,,,,	bare right again
,,,.13,,	bare right all
.33,-.22,,,,	bare right and
.16,,,,,	bare right another
.12,,,,,	bare right are
.18,,,,,	bare right around
.13,,,,,	bare right be
,.1,,,,	bare right before
.12,,,,,	bare right behind
.16,,,,,	bare right blow
.15,,,-.09,,	bare right both
.1,,,,,	bare right break
.22,-.11,,,,	bare right by
.12,,,,,	bare right can't
.19,,,,,	bare right clean
.12,,,,,	bare right come
-.19,.15,-.09,.15,-.09,-.13	bare right crack
.26,,,-.13,,	bare right cut
,.18,-.18,-.08,,	bare right do
.25,,,-.09,,	bare right down
.13,,,,,	bare right drip
.16,,,,,	bare right dry
.16,,,,,	bare right eat
.19,,,,,	bare right fine
,.09,,,,	bare right for
,.09,,,,	bare right from
.1,-.08,,,,	bare right get
.35,,,-.25,,	bare right glue
.19,,,,,	bare right go
.12,,,,,	bare right gotta
.23,,,-.11,,	bare right hang
.11,,,,,	bare right has
.11,,,,,	bare right have
.23,,-.13,,,	bare right here
.17,,,,,	bare right hold
.11,,,,,	bare right hum
.21,,,,,	bare right i
.16,,,,,	bare right if
.22,,,,,	bare right in
.13,,,,,	bare right is
.18,,,,,	bare right it
.15,,,,,	bare right it's
.14,,,,,	bare right just
.29,,,-.09,-.09,	bare right land
.09,,,,,	bare right leak
.11,.15,-.4,,,	bare right leave
.13,,,,,	bare right lift
.17,,,,,	bare right like
.11,,,,,	bare right measure
,-.08,,.13,,	bare right mount
.23,-.14,,,,	bare right need
.21,,,,,	bare right no
,.15,,,,	bare right not
.21,,,,,	bare right of
.2,,,,,	bare right off
.1,,,,,	bare right on
.15,,,,,	bare right only
.12,,,,,	bare right open
.09,,,,,	bare right over
.12,,,,,	bare right place
.16,,,,,	bare right pull
.18,,,,,	bare right read
.11,,,,,	bare right right
.2,,,,,	bare right run
.08,,,,,	bare right sag
.14,,,,,	bare right say
.14,,,,,	bare right set
.33,-.22,,,,	bare right short
,,,,,.13	bare right show
.23,,-.09,,,	bare right sit
.12,,,,,	bare right start
.26,-.11,,,,	bare right stay
.11,,,,,	bare right stick
,,.13,,,	bare right still
.15,,,,,	bare right strip
.15,,,,,	bare right tear
.16,,,,,	bare right test
.08,-.08,,,,	bare right that
.17,,,,,	bare right the
.22,-.1,,,,	bare right there
.12,,,,,	bare right those
.16,,,,,	bare right through
.19,-.08,,,,	bare right til
.17,,,,,	bare right till
.15,,,,,	bare right to
.15,,,,,	bare right too
.18,,,,,	bare right top
.15,,,,,	bare right trip
.17,,,,,	bare right under
.17,,,,,	bare right until
.23,,,,,	bare right up
.16,,,,,	bare right want
.14,,,,,	bare right weep
.29,-.14,,,,	bare right were
.14,,,,,	bare right where
.11,,,,,	bare right which
.17,-.08,,,,	bare right will
,.12,,-.11,,	bare right with
.14,,,,,	bare right won't
.24,-.09,-.08,-.08,,	bare right you
.26,-.13,,,,	bare say imperative behind
.27,-.09,,,,	bare say past before
.13,,,,,	bare say past behind
.17,,,,,	bare say present before
.13,,,,,	bare says copula before
.18,,,,,	bare says copula before not
.14,,,,,	bare says copula behind
.18,,,,,	bare says imperative before
.22,,,,,	bare says imperative behind
.2,-.1,,,,	bare says imperative behind not
.25,-.1,,,,	bare says modal before
.22,,,,,	bare says modal before not
.19,,,,,	bare says modal behind
.08,-.08,.11,-.08,,	bare says modal behind not
.17,,,,,	bare says none no
.22,,,,,	bare says none no not
.16,,,,,	bare says owed before
.12,,,,,	bare says owed behind
.23,-.15,,,,	bare says owed behind not
.23,,,,,	bare says past before
-.12,.19,-.13,,,	bare says past before not
.19,,,,,	bare says past behind
,.11,,-.1,,	bare says past behind not
.18,,,,,	bare says present before
.15,,,,,	bare says present before not
.21,,,,,	bare says present behind
.08,,,,,	bare says present behind not
.18,,,,,	bare see imperative behind
.17,,,,,	bare see modal behind
.1,,,,,	bare see owed behind
,,.16,-.08,,	bare see past behind
.14,,,,,	bare see present behind
.16,,,-.1,,	bare use past behind
.19,-.1,,,,	bare verb add behind
.13,,,,,	bare verb ask behind
.12,,,,,	bare verb be before
.12,,,,,	bare verb be behind
,,-.09,,,	bare verb bring behind
.21,-.09,,,,	bare verb call behind
.18,-.08,,,,	bare verb catch before
.18,,,,,	bare verb caulk before
-.13,.16,,,,	bare verb change behind
,,.1,,,	bare verb check behind
.14,,,,,	bare verb clear before
.09,,,,,	bare verb clear behind
.16,,,,,	bare verb close behind
.13,,,,,	bare verb come before
.16,,,,,	bare verb come behind
-.2,.15,-.1,.16,-.1,-.13	bare verb crack before
.1,,,,,	bare verb cut before
.25,,,-.12,,	bare verb cut behind
.31,-.14,-.12,,,	bare verb do before
.15,,,,,	bare verb do behind
.18,,,,,	bare verb drill before
.11,,,,,	bare verb drip before
.11,,,,,	bare verb drip behind
.18,,,,,	bare verb drop before
.14,,,,,	bare verb drop behind
.23,-.13,,,,	bare verb dump before
.1,,,,,	bare verb end behind
.1,,,,,	bare verb fill behind
.13,,,,,	bare verb find behind
.18,,,-.08,,	bare verb finish behind
,,.1,,,	bare verb get before
.14,,,,,	bare verb get behind
.31,,,-.21,,	bare verb glue before
.19,,,,,	bare verb go before
.1,,,-.1,,	bare verb go behind
.13,,,,,	bare verb gotta behind
.34,-.31,,,,	bare verb grab behind
.21,,,,,	bare verb grout before
.27,,,-.14,,	bare verb hang before
.25,-.09,,-.2,,	bare verb hang behind
.1,,,,,	bare verb have before
.16,,,,,	bare verb have behind
-.17,,,.23,,	bare verb hit behind
.14,,,,,	bare verb hold before
.08,,,,,	bare verb hold behind
.15,,,,,	bare verb hum before
.15,,,,,	bare verb i'll behind
.2,-.1,,,,	bare verb keep behind
.24,,,,,	bare verb land before
.33,,,-.25,,	bare verb lay behind
.1,,,,,	bare verb leak before
,.16,-.32,,,	bare verb leave before
.18,,,,,	bare verb leave behind
.16,,,,,	bare verb let behind
.1,,,,,	bare verb look behind
.15,,,,,	bare verb lose before
.15,,,,,	bare verb lose behind
.12,,,,,	bare verb make behind
.17,,,,,	bare verb measure before
.17,-.09,,,,	bare verb move before
.19,-.08,,,,	bare verb move behind
.26,-.17,,,,	bare verb need before
.16,-.08,,,,	bare verb need behind
.15,,,,,	bare verb null before
.14,,,,,	bare verb null behind
.17,,,,,	bare verb null no
.15,,,,,	bare verb open behind
-.1,.2,-.09,-.09,-.23,-.1	bare verb order behind
-.09,.16,,,,	bare verb owe behind
,,,.1,,	bare verb pack behind
.19,,,,,	bare verb paint before
.21,,,,,	bare verb pass behind
.28,-.2,,,,	bare verb pick behind
.17,,,,,	bare verb pull before
.17,,,,,	bare verb pull behind
.17,,,-.13,,	bare verb put behind
.21,-.09,,,,	bare verb read before
,,,.1,,	bare verb replace behind
.11,,,,,	bare verb reset behind
.12,,,,,	bare verb rip before
-.13,,.22,,,	bare verb rip behind
.17,,,,,	bare verb roll behind
.14,,,,,	bare verb run before
.21,,,,,	bare verb run behind
.08,,,,,	bare verb sag before
.14,,,,,	bare verb sand before
.1,,,,,	bare verb sand behind
.14,,,,,	bare verb say before
,.14,,,,	bare verb say behind
.14,,,,,	bare verb scribe behind
.15,,,,,	bare verb see behind
.43,-.22,-.08,,,-.18	bare verb send behind
.19,-.1,,,,	bare verb shim before
-.11,,,,,.19	bare verb show before
.09,,,,,	bare verb silicone behind
-.33,,,.35,,	bare verb sister behind
.16,,,,,	bare verb sit before
.14,,,,,	bare verb sit behind
.11,,,,,	bare verb skim behind
.12,,,,,	bare verb start before
.14,,,,,	bare verb start behind
.12,,,,,	bare verb stick before
.2,,,-.08,,	bare verb stop behind
.1,,,,,	bare verb strip before
.24,,,-.11,,	bare verb swap behind
.12,,,-.12,,	bare verb take behind
-.14,,.21,,,	bare verb tape before
.26,-.11,,-.1,,	bare verb tape behind
.1,,,,,	bare verb test before
.13,,,,,	bare verb think behind
.28,-.12,,,-.12,	bare verb throw behind
.14,,,,,	bare verb trim before
.15,,,,,	bare verb turn before
.2,,,-.13,,	bare verb use behind
.18,,,,,	bare verb wait behind
.12,,,,,	bare verb want before
.13,,,,,	bare verb weep before
.09,,,,,	bare whole clause
.18,,,,,	bare work imperative before
.25,-.1,,,,	bare work imperative behind
.22,,,,,	bare work modal before
.18,,,,,	bare work modal behind
.18,,,,,	bare work owed before
,.14,,,,	bare work owed behind
.28,,,-.1,,	bare work past before
.17,,,,,	bare work past behind
.21,,,,,	bare work present before
.24,,,-.09,,	bare work present behind
,,.17,,,	bound about
.18,,-.16,-.21,,	bound atMost
.26,,,-.16,,	bound over
-.35,-.1,-.09,.31,.12,	code
,-.15,-.17,-.19,-.09,.17	count after bought far
-.37,-.35,.11,-.14,.31,-.15	count after bought sentence
,.1,-.09,-.12,,	count after have far
-.2,-.23,.33,-.22,-.1,	count after have here
-.1,.2,,-.16,,	count after have sentence
.09,,-.09,,-.08,	count after need far
,.12,,-.1,,	count after need here
-.14,.3,,-.18,,	count after need sentence
,.18,,-.15,,-.08	count after none far
,.1,,-.19,,	count after none here
.14,,-.1,-.08,,	count after returned far
-.2,.16,,.12,-.09,-.08	count after used far
,-.22,,,,	count after used here
,,.12,,,	count after used sentence
,,-.1,-.1,-.11,	count buy imperative behind
,-.21,-.13,-.15,.27,-.11	count buy past behind
-.15,-.16,,-.23,-.08,.32	count cue back
,-.23,-.2,-.09,.18,-.17	count cue bought
-.25,-.1,.41,,,	count cue have
,.28,,-.13,,	count cue need
-.24,,,.31,,	count cue used
.36,,-.16,-.14,,	count flawed
.34,-.15,-.09,-.11,,	count have present before
-.11,-.18,.2,,,	count have present behind
-.22,,.32,-.13,-.09,	count kept
-.13,.1,,.12,,	count left #
-.25,.2,-.11,.17,-.09,	count left +
.35,-.16,,-.14,,	count left G
,,.16,-.19,-.16,-.08	count left Q
.26,,,-.1,-.21,	count left T
-.1,,-.11,.21,,	count left all
-.2,.12,,.13,,	count left and
.4,-.15,-.11,-.14,,	count left at
.33,-.16,-.1,-.13,,	count left be
.2,-.11,-.15,-.14,,	count left bring
.09,.13,,-.21,,-.1	count left for
,,,-.12,.09,-.12	count left get
.16,-.23,-.14,,,	count left go
-.1,-.17,.18,,,	count left have
-.13,-.26,-.2,.25,,	count left in
.25,,,-.12,,	count left is
.16,,-.23,-.31,,-.08	count left it
,.15,-.19,-.29,,	count left it's
,.12,-.12,-.13,,	count left me
,.22,-.13,-.2,,	count left miss
-.08,.24,,,,	count left need
.24,-.18,-.21,-.25,,.14	count left of
.1,,-.17,-.09,,	count left on
,-.26,.21,-.26,-.1,-.11	count left only
.34,-.12,-.1,-.25,,	count left pull
.09,-.2,-.09,.09,,	count left put
.29,-.16,,-.13,,	count left read
,-.16,-.13,,,	count left run
.14,,-.12,-.1,,	count left say
-.34,.39,-.15,-.16,,	count left short
,-.27,.28,-.14,,-.09	count left the
-.11,-.17,.3,-.17,,	count left there's
.08,-.12,-.13,,,-.09	count left through
-.14,-.28,.31,,,	count left to
-.25,.18,,.13,-.1,	count left up
-.35,.08,,.24,,	count left use
.26,-.1,-.09,-.12,,	count left want
.19,-.11,-.14,,,	count left with
-.3,.36,-.16,-.27,,	count list need
-.13,-.17,,.13,,-.09	count measure owed behind
.23,,,-.21,,	count measure past behind
-.13,.14,,,,	count more
-.17,-.12,.36,-.19,,	count move past before
,.17,,-.26,-.09,-.12	count move past behind
-.1,.09,,,,	count name flawed
.3,-.21,-.12,-.16,,	count named before area
,-.16,,.14,,	count named before fixture
.15,,,-.11,,	count named before material
.36,-.1,-.11,-.15,,	count named before surface
.1,,,-.09,,	count named before word
.64,-.27,-.2,-.32,,	count named here defect
.18,-.1,-.18,,,	count named here fixture
-.25,.13,,.19,,	count named here material
-.54,.18,.09,.13,.13,	count named here part
.49,-.11,-.15,-.31,,	count named here surface
-.22,.26,-.13,,,-.08	count named here tool
-.12,.13,,.16,-.09,-.09	count named here word
.18,,-.19,-.23,-.12,-.09	count nameless
-.32,.12,-.1,.08,,	count need modal behind
,.12,,,,	count need owed behind
-.14,.28,-.22,-.26,,-.08	count not ahead
.12,,-.12,-.18,,	count null copula before
,,.1,,,	count null copula behind
,,-.13,.08,,-.1	count null modal behind
,.08,-.19,-.15,,	count null owed behind
,,,-.11,,.12	count other copula before
.1,,,,,	count other copula behind
-.26,.44,-.14,-.12,,	count other imperative behind
,,,-.1,,	count other modal behind
,.12,-.11,-.13,,	count other owed behind
.33,-.23,-.18,-.33,,.12	count other past before
,-.28,,,,.16	count other past behind
,.15,-.22,,,	count other present behind
-.36,.16,,.25,,	count pointing
-.15,,-.12,.14,-.1,	count right +
,.19,-.08,-.18,-.19,	count right Q
.18,-.24,-.17,.11,,	count right T
.11,-.25,.11,-.31,-.09,-.1	count right already
,,,.11,,	count right and
.1,-.38,,.14,-.09,-.15	count right are
.35,-.25,-.1,-.23,,	count right at
-.39,.38,.14,-.27,,-.08	count right by
.1,-.17,-.13,-.19,,.11	count right come
,-.22,-.15,-.22,,.2	count right crack
,,-.22,.13,,	count right for
,,,-.2,-.1,-.09	count right from
.16,,-.11,-.21,,	count right have
,-.13,-.08,.26,-.09,-.13	count right in
,-.19,.11,,,-.1	count right is
-.35,,.45,-.12,,	count right leave
,.13,-.08,-.11,,	count right more
-.1,.21,-.21,,,	count right of
,-.15,-.17,.16,,	count right off
,-.21,,,-.1,	count right on
,-.17,-.1,-.22,,.19	count right over
-.12,.26,-.25,-.27,,-.08	count right short
,-.29,.16,-.26,-.1,-.09	count right strip
.19,,,-.38,-.08,	count right the
.16,,,,,-.08	count right to
.17,.08,-.11,-.25,,	count right under
,.15,-.12,-.26,,	count right up
-.16,.14,-.17,-.24,-.08,.28	count right were
.24,,-.16,-.09,,	count right with
.38,-.17,-.16,-.18,,	count say past behind
,,.18,-.1,,	count say present behind
,,,-.13,,.11	count says copula before
.15,,-.32,,,	count says copula behind not
-.12,.25,-.1,,,	count says imperative behind
-.17,.26,-.15,-.21,,	count says imperative behind not
-.2,.25,-.12,,,	count says modal behind
,.22,-.13,-.32,,	count says owed before
,.11,,,,	count says owed behind
,-.23,,.17,,	count says past before
,-.16,,.1,,	count says past behind
,,,-.22,,	count says present before
-.12,,.16,,,	count says present behind
-.13,.21,,,,	count sized
.11,.16,-.24,-.09,,	count sold so false
-.13,.12,-.15,.12,,	count sold so true
,-.14,-.08,.14,,	count use past behind
,,,-.13,,.11	count verb be before
.1,,,,,	count verb be behind
-.21,.21,,,,	count verb bring behind
,.14,-.1,-.12,,-.12	count verb buy behind
,-.27,-.11,.11,,	count verb call behind
-.16,.17,,,,	count verb get behind
.39,-.23,-.17,-.21,-.17,-.08	count verb go behind
.34,-.15,-.09,-.11,,	count verb have before
-.11,-.18,.2,,,	count verb have behind
-.33,-.1,.4,-.17,,	count verb leave before
,.24,,-.08,,	count verb need behind
.12,,-.12,-.18,,	count verb null before
,,.09,,,	count verb null behind
-.49,.29,-.15,-.17,.27,	count verb order behind
-.33,.35,,-.13,-.1,	count verb pick behind
.33,-.13,,-.24,,	count verb pull behind
,-.21,-.09,.18,,	count verb put behind
.12,,,,,	count verb read behind
-.12,,-.12,.13,-.09,-.09	count verb run behind
,,.2,-.2,,	count verb sand behind
,,.11,-.11,,	count verb say behind
.32,,-.17,-.39,,	count verb sister behind
-.21,-.19,-.19,,-.12,.2	count verb take behind
,,-.09,,,	count verb use behind
.16,-.09,-.08,,,	count verb want behind
-.14,,,.16,,-.09	count whole clause
.09,,-.22,-.28,,	count work modal behind
.29,-.24,-.12,-.13,,	count work owed behind
,-.24,-.26,.21,,-.13	count work past before
,-.14,,.16,-.08,-.08	count work past behind
-.14,-.22,-.11,.24,,	count work present behind
.11,,,,,	counter appliances
,,,.08,,	counter concrete
.15,,,,,	counter doors
.1,,,,,	counter electrical
.22,,,,,	counter flooring
-.1,,,,,	counter hardware
.13,,-.1,,,	counter landscape
.12,,,,,	counter lumber
,.09,,,,	counter paint
,-.13,.09,.15,,	counter roofing
,,,,,.14	cue back
-.1,-.26,-.17,-.13,.38,	cue bought
,,.14,,,	cue have
,.19,,,,	cue need
,,,.09,,	cue used
.14,,,,,	first G
-.18,.23,,-.09,-.12,	first N
.11,,,,,	first air
,,-.09,.15,,	first all
-.3,.26,,.18,,	first an
.19,,-.1,-.23,,	first another
.24,-.11,,,,	first any
.16,,,,,	first bay
.24,-.1,-.08,,,	first block
-.12,.15,-.11,,,	first bolt
-.14,,-.11,.25,-.09,	first both
.13,,,,,	first bottom
.24,-.09,,-.09,,	first bracket
.24,-.09,,,,	first catch
.3,-.17,,,,	first caulk
.16,,,,,	first ceiling
.16,,,,,	first clear
.1,,,,,	first coat
.15,,,,,	first code
.16,,,,,	first corner
.12,,,,,	first crown
.25,-.13,,,,	first cust
.14,,,,,	first daylight
.25,-.12,,-.15,,	first drain
.28,-.17,,,,	first drill
.22,,,,,	first drop
.25,,,-.1,,	first drywall
-.16,,,,.22,	first electrical
.3,-.12,,-.11,,	first flat
.26,-.09,,,,	first floor
-.14,.17,,,,	first frame
.19,,,,,	first front
.12,,,,,	first gap
.23,,,,,	first gas
.24,-.08,-.11,-.09,,	first glue
.17,,,,,	first grade
.2,,,,,	first grout
.2,,,,,	first hello
.28,-.08,,-.08,,	first her
,.16,,-.14,,	first hinge
.19,-.09,,,,	first his
.18,,,,,	first hole
.15,,,,,	first hook
.15,,,,,	first island
.26,,,,,	first latch
.12,,,,,	first line
.3,-.1,-.08,-.08,,	first lock
.26,-.09,,,,	first long
.2,,,,,	first maple
,-.13,.15,,,	first more
.22,-.09,,,,	first mud
.32,-.09,,-.11,,	first my
.32,-.14,,-.1,,	first nail
-.33,,-.11,.25,.16,	first new
.13,,,,,	first no
-.17,,,.22,,	first oak
.15,,,,,	first of all
.19,,,,,	first old
.09,-.18,-.11,,,	first ones
.27,-.18,-.12,,,	first our
.25,-.1,,,,	first paint
.24,-.09,,,,	first prime
,-.09,.17,,,	first pull
.17,,,,,	first sand
.24,,,-.08,,	first screen
.11,-.12,.14,-.19,,	first screw
.2,,,,,	first seam
.13,,,,,	first second coat
-.14,.23,,,,	first shim
.23,,,-.09,,	first shingle
-.11,.18,,,,	first side
.26,-.09,,,,	first silicone
.14,,,,,	first skirt
.2,,,,,	first slope
-.22,.27,-.1,-.1,,	first some
.14,,,,,	first stair
.21,,,-.09,,	first stairs
.16,,,,,	first step
.28,-.17,,,,	first strike
.22,,,,,	first suite
.18,-.12,-.11,,,	first tape
.13,,,,,	first that
.19,,,,,	first the
.23,-.1,,,,	first their
,.08,,,,	first this
.22,-.18,,,,	first those
.22,,,-.17,,	first tile
.17,,,,,	first trim
.12,,,,,	first truck
.25,,,,,	first wall
.17,,,,,	first walls
.25,-.16,,,,	first water
.31,-.14,,-.09,,	first white
.19,,,,,	first zone
.13,,,,,	flawed
.24,-.16,,,,	goods false false
.21,,,,,	goods false true
,-.33,-.26,.18,-.1,-.09	group eachOf
.34,-.15,,-.14,,	group pair
.27,-.09,-.11,-.11,,	group range
.14,,,,,	head 2 x
.13,,,,,	head ac
-.17,.15,-.19,.15,,	head acrylic
-.26,,,,.09,	head adhesive
.24,-.1,,-.08,,	head air
.26,-.12,,,,	head anything
.19,,,,,	head architraves
.17,,-.12,-.19,,	head arm
.13,-.2,.08,-.14,,	head back
.19,,,,,	head back door
.19,,,,,	head backsplash
.23,-.09,-.09,-.09,,	head baffles
.23,-.31,-.18,,,-.13	head balusters
-.17,.11,,.08,,	head bar
.09,-.08,,,-.1,	head base
,.09,-.09,-.11,,	head batteries
-.14,.09,,.15,,	head battery
,-.13,.21,-.15,,	head batts
.11,,,,,	head bay
.3,-.14,-.11,-.17,,	head beadboard
.18,,,,,	head beam
-.09,-.2,,.1,,	head belts
.19,,,-.11,,	head bench
.38,-.15,-.17,-.24,,	head bit
,,,-.19,-.16,-.11	head blade
,.21,-.16,,,	head blinds
,.12,,-.08,,	head block
.14,,,,,	head blocking
-.19,.08,.11,,,	head blocks
.15,.16,-.17,-.16,,	head blue tape
.12,-.19,-.18,.16,-.1,	head board
-.19,-.15,,.26,,	head boards
-.22,.34,-.19,-.09,,-.08	head bolts
.18,,,,,	head boss
.2,,,,,	head bottom
-.23,.25,-.1,,,	head box
-.14,.11,-.1,.14,,	head bracket
,,-.13,,,	head brackets
,-.13,-.28,-.23,.23,	head brads
-.17,-.17,.21,,,	head braided lines
,-.17,-.11,,,	head breaker
-.3,-.1,.14,.2,,-.08	head brick
,.16,-.09,,,	head cabinet screws
-.22,-.37,.31,,-.12,	head cabinets
-.38,,,.36,,	head cable
,.09,,,,	head can lights
,,,,,-.08	head cap
.41,-.22,-.12,-.38,-.08,	head carcasses
.27,-.11,,-.13,,	head carpet
.19,-.1,,-.12,,	head casing
.24,-.09,,,,	head catch
.13,,-.1,-.09,,	head caulk
.24,,,,,	head ceiling
-.14,-.24,.18,-.33,.14,-.09	head ceiling tile
,-.08,.11,,-.14,-.09	head cellulose
.1,,.12,-.22,,	head chairs
.23,,,-.09,,	head chimney
.24,,,-.1,,	head circuit
-.12,.17,-.1,,,	head clamps
.13,,,,,	head clear
.26,-.13,,-.08,,	head close
.17,,,-.09,,	head closet
.28,-.23,,,,	head coat
,-.21,-.11,.16,,	head coat hooks
.26,-.22,,,,	head code
.22,-.11,-.17,-.19,,	head coil
.21,,,,,	head cold
.21,-.13,,,,	head come
.08,.08,-.16,,,	head concrete
.25,-.18,-.11,-.23,,	head copper
.18,,,,,	head cord's
,.11,,,,	head corner
.18,,-.13,-.09,,	head corner bead
.15,,,,,	head counter
-.09,-.08,-.23,.17,-.09,-.09	head couplings
.23,-.14,,-.11,,	head cricket
.17,,,-.16,,	head crown
.21,,,,,	head curb
,-.13,-.12,.15,,	head cut
.14,,,,,	head daylight
.19,,,,,	head dead
,,-.14,.11,,	head deck mud
.38,-.16,-.09,-.15,,	head deep
,.14,-.09,,,	head dimmer
.14,,,,,	head dishwasher
.23,,,,,	head dog
.17,,,,,	head door
.14,,,-.09,,	head door's
.13,-.16,,,,	head doors
-.15,-.19,-.12,.21,,	head downspout
.37,-.13,-.08,-.17,,	head drain
,.15,,,,	head drawer
,,-.11,,,	head drawer front
,,-.16,-.27,,.19	head drawer slides
.18,,,,,	head drawing
.2,,,,,	head drop
.43,-.18,-.1,-.32,,	head drops
-.08,.14,,,,	head dryer
-.15,.08,,.12,,	head dryer vent
.25,-.08,,-.22,,	head drywall
-.13,,,.12,,	head drywall's
.16,.09,,-.19,,	head duct
.29,-.09,,-.15,,	head dumpster
.15,,,,,	head edge
-.33,.37,-.08,-.12,,	head elbow
-.3,,-.24,.28,-.09,	head elbows
.26,-.12,-.09,-.15,,	head electrical
.18,,,,,	head end
-.18,.1,-.17,.11,,.15	head end caps
.23,,,-.09,,	head end panel
-.13,-.15,.19,-.09,,	head enough
-.37,-.16,.21,.22,,	head epoxy
.23,,,-.09,,	head except
,.14,,-.09,,	head face
.15,,,,,	head falls
.32,,,-.22,,	head fan
.19,,-.09,-.25,,	head fascia
.18,,,,,	head faucet
,.1,-.11,-.15,-.09,	head fell
.27,-.13,,-.08,,	head fence
.12,-.13,.14,-.18,,	head filler
-.18,.14,,,,	head filter
-.33,-.17,.12,.16,-.11,-.11	head filters
.21,,,,,	head fine
,.26,-.24,-.25,-.12,	head fire caulk
.14,,,,,	head fireplace
.12,,,,,	head first
,-.12,-.13,.15,,	head first coat
.28,-.12,,-.14,,	head flange
.23,,,-.13,,	head flashing
-.17,-.21,-.12,.22,-.16,	head flashing tape
.28,-.12,,-.09,,	head flat
-.21,.33,-.08,-.14,,	head flex
.1,,,,,	head floor
.19,,,,,	head floor's
-.26,,,.15,-.08,	head foam
.19,,-.11,-.11,,	head folks
.13,,,-.09,,	head footings
.2,-.1,,-.14,,	head forms
,.09,,-.13,,	head frame
.13,,,,,	head framing
.19,-.08,,,,	head fridge
.28,,,-.13,,	head furnace
.21,-.09,,,,	head gap
.23,-.15,,,,	head gas
-.26,.28,,,,	head gasket
.26,-.12,,-.09,,	head gate
,,,-.11,,	head gfci
.29,-.19,,,,	head glass
.17,-.12,,,,	head glue
,-.15,.18,-.23,,	head glue's
.18,,,,,	head go
.15,,,,,	head good
.11,,,,,	head grade
-.13,-.18,-.09,.19,,	head grid
.2,-.16,,,,	head grout
,-.14,.11,-.17,,	head grout's
.19,,,,,	head hair
-.33,-.18,-.15,.36,-.08,	head hall
-.14,-.09,.15,-.23,,.19	head handles
.23,,,,,	head handrail
,-.21,.2,-.13,-.09,	head hardware
.23,,,,,	head hatch
.25,-.16,,,,	head header
.14,,,,,	head hearth
.32,-.17,-.16,-.2,,	head heat mat's
.34,-.11,,-.15,,	head heat pump
.18,,,,,	head height
.22,-.1,,-.1,,	head height's
.1,,,,,	head hendersons
-.11,-.14,,,.1,	head hidden clips
.36,-.21,-.09,-.22,,	head high
,,-.09,,,	head hinge
-.15,-.27,,,.2,-.11	head hinges
.3,,,-.08,-.08,	head hole
.26,,,-.15,,	head holes
,-.16,.11,,,	head hood
.18,,,,,	head hook
.09,-.22,-.13,,,	head hooks
.24,-.18,,,,	head hose
.21,,,,,	head hose bib
,-.21,-.14,.12,,	head hot
.19,,,,,	head house
.15,,,,,	head humidity
.23,-.25,-.19,-.22,.14,	head insulation
.16,,,,,	head island
.22,,,-.09,,	head jamb
.12,,,,,	head job
.21,-.1,,,,	head joint
.36,-.08,-.19,-.18,,	head joist
,,-.09,,,	head joists
.17,,,,,	head key
.18,-.18,-.18,,,	head keys
-.14,-.13,.19,-.15,.15,	head kit
.26,,,-.12,,	head kitchen
.14,,,,,	head kitchen faucet
.16,,,,,	head knees
-.09,.17,-.1,-.22,,	head knife
-.34,,.14,.21,-.09,-.08	head knobs
,-.09,,-.09,,	head lacquer
,.1,,,,	head ladder
,,-.17,,,	head lags
.29,-.14,,-.19,,	head landing
.25,-.09,,,,	head latch
.21,,,-.1,,	head leg
-.11,.2,,-.11,,	head legs
.29,,,-.19,,	head level
-.2,.19,,.09,-.09,-.08	head lid
.18,-.15,,,,	head light
.32,-.11,-.16,-.18,,	head lights
.14,,,,,	head line
.22,,,-.1,,	head line set
.26,-.08,,,,	head lock
.19,-.15,.1,-.22,-.09,-.09	head locks
,-.1,-.1,.17,,	head long
.35,-.11,-.14,-.14,,	head loose
.22,,,,,	head low
.26,-.17,,,,	head machine
.37,-.17,-.11,-.31,,	head maglock
-.17,.1,.08,,,	head mastic
,.15,-.1,,,	head max
,,.17,-.1,,	head maybe
,-.12,-.18,.2,-.09,	head mesh
,-.15,,.09,,	head meter
.1,,,,,	head middle
.26,-.12,,-.16,,	head min
.33,-.12,-.09,-.13,,	head mirror
.12,,,,,	head moisture
.18,,,,,	head morning
-.28,.32,-.14,,,	head mortar
-.26,.37,,-.15,,	head mud
.16,,,,,	head must
.2,.12,-.18,-.23,-.1,	head nail
.1,,,,,	head niche
-.13,,,.12,,	head nm
.15,,,,,	head old
.13,,,,,	head one's
.12,,,,,	head only
.19,,,,,	head opening
-.15,.2,,-.11,,	head opening's
.23,-.1,,,,	head outlet
.17,,,,,	head outlet's
-.12,-.1,.28,-.31,-.09,-.09	head outlets
-.11,.2,-.1,-.18,,	head outside
.25,,,-.14,,	head overhang
.29,-.11,,-.14,,	head paint
,,,.13,,	head pan
.24,-.12,-.22,,,.09	head panel
.14,,-.17,,-.08,-.1	head panels
.33,-.11,,-.24,,	head paper
.19,-.17,,,,	head patch
,-.2,-.14,.16,,	head pendant
-.1,.17,-.12,-.14,,	head pickets
,,.12,-.2,,	head piece
,.23,-.16,,,	head pins
,.09,,-.12,,	head pipe
.32,-.17,-.12,-.24,,	head pipe's
.22,-.1,-.09,-.21,,	head pipes
.18,-.19,,,,	head plank
,.15,,,,	head plate
-.4,.33,-.12,,,.15	head plates
.13,-.22,.08,-.13,,	head ply
.17,-.17,,,,	head plywood
-.1,,-.12,.15,,	head poly
.1,-.14,-.15,.12,,	head post
.27,-.24,-.17,,,	head posts
.31,-.11,,-.27,,	head pressure
.21,,,,,	head primed
-.24,.11,-.15,.2,,	head primer
.23,,,,,	head pull
.14,,,-.27,,	head pulls
.25,,,-.12,,	head pump
,-.27,-.22,.24,-.15,-.09	head pvc
,-.22,-.12,.14,,	head radiator
-.11,.23,-.13,-.15,,	head rail
,,.14,-.12,,	head rails
.18,,,,,	head rain
.17,,,,,	head range
.21,,,,,	head read
.17,,,,,	head rear
-.31,-.09,-.14,.23,.18,	head receptacles
,.1,-.16,-.09,-.11,	head reducer
.11,,,,,	head return
-.22,-.11,-.1,.25,,	head rim
,,-.16,.14,,	head rim joist
,,,.13,,	head ring
.12,,,,,	head rise
.2,,,,,	head riser
.25,,-.09,-.12,,	head riser's
.3,-.26,,,,	head rock
,,-.09,,,-.16	head roller
,,-.13,,-.09,-.09	head rollers
.27,-.1,,-.15,,	head round
.31,-.14,,-.16,,	head run
.13,,,,,	head sand
.11,,-.18,-.16,,	head sandpaper
.22,-.17,.09,-.11,,	head satin
.24,,,-.08,,	head saw
,-.19,.11,-.12,.13,	head sconces
.08,,,,,	head screed
.2,,-.08,-.13,,	head screw
,-.1,-.09,.19,,	head screws
-.2,.1,.21,-.14,,	head sealant
-.23,.14,,-.13,-.09,-.09	head sealer
.25,,,,,	head seam
.14,,,,,	head second coat
-.21,-.18,-.14,.33,,	head set
.16,,,,,	head shd
,.15,,-.08,,	head sheathing
,-.09,-.09,,,	head sheet rock
.17,,,-.09,,	head shelf
.15,-.23,-.15,,,	head shelves
.26,-.1,-.08,,,	head shim
-.29,.22,,,,	head shims
,-.15,.24,-.23,,	head shingles
.12,,,,,	head shot
.3,-.08,,-.18,,	head shower
.19,,-.09,-.1,,	head shower walls
.2,-.09,,,,	head shutoff
.21,,,,,	head side
.45,-.15,-.11,-.3,,	head sides
-.09,-.2,-.08,.2,,	head siding
,,-.15,-.15,.13,	head silicone
,,,,.11,	head sill
.22,,,,,	head sink
.1,-.08,-.13,,,	head skirting
-.11,,-.13,.1,,	head skirting's
-.28,.27,.16,,,	head slab
.16,,,,,	head slider
.23,,,-.1,,	head slope
.26,-.1,-.09,-.17,,	head slow
,.09,-.11,,,	head smokes
,-.16,-.1,.17,,	head sod
.26,-.15,,,,	head soffit
.29,,-.11,-.13,,	head soffit vents
.26,-.1,,,,	head sorry
,.09,,,,	head splash
.3,,,-.16,,	head splice
.1,,,,,	head spout
.31,-.2,-.1,-.18,,	head square
.35,-.28,-.14,-.09,,	head stack
.1,-.2,.18,-.12,,	head stain
,,,.14,,	head stairs
.16,,,,,	head standpipe
.32,-.18,-.16,-.19,,	head staple
.25,,,-.1,,	head static
.21,,,,,	head step
.16,,,,,	head steps
.16,,,,,	head stile
.33,-.14,-.23,-.1,,	head still
-.22,,.09,.11,,	head stone
-.14,.19,,,,	head stone's
.11,,,,,	head stop
.2,,,,-.08,	head store
.17,-.11,,-.13,,	head stove
.25,-.11,-.08,-.16,,	head straight
-.28,,,.19,,	head strainers
,.09,,,,	head strike
.22,-.09,,-.09,,	head string
-.2,-.14,.17,.15,,	head stringers
-.21,,,.24,,	head structural screws
.09,,,,,	head stub
.11,,,,,	head stud
,-.12,,-.13,,.17	head studs
.21,-.14,,,,	head subfloor
.19,,,-.14,,	head supplies
-.16,,-.19,-.19,.18,-.09	head supply line
.15,,,,,	head supposed
-.11,.19,,-.08,,	head sweep
.3,-.11,,-.14,,	head switch
.38,,,-.35,,	head tag
.22,,,-.11,,	head tall
,.1,,-.08,,	head tank
.18,,,,,	head temp
.15,,,,,	head thermostat
.16,,,,,	head thick
,-.13,.11,,,	head thin set
.29,-.14,-.2,-.21,-.08,	head thing
,.1,,,,	head thinset
,.12,,,,	head threshold
.24,,,-.22,,	head ticket
.16,-.19,.08,,,	head tile
.1,,,,,	head tile's
-.11,.22,-.12,-.12,,.1	head tiles
.19,,,,,	head toilet
.11,,,,,	head top
-.19,-.26,-.14,-.25,.09,.21	head towel bar
.34,-.13,-.11,-.15,,	head track
.17,,,,,	head trailer
,,-.09,-.16,,	head trap
.14,,,,,	head tray
.29,-.14,,-.13,,	head tread
-.22,-.23,.16,.15,,.09	head treads
.2,-.09,,,,	head trim
.16,,,,,	head truck
.19,,,-.1,,	head tub
.44,-.21,-.13,-.33,,	head tub's
.2,,,,,	head two
.23,-.15,-.14,-.26,,	head two by ten
-.25,-.1,-.14,.18,.18,	head uppers
,-.17,-.12,.11,,	head upstairs
,,-.1,.09,,	head valve
.14,,,,,	head van
.19,,,-.08,,	head vanity
-.1,.15,,-.1,,	head vapor barrier
.08,-.11,,,,	head vent
.12,,,,,	head walk
.18,,,,,	head wall
.17,-.2,,-.13,,	head wall tile
.14,,,,,	head wall's
.17,-.09,,,,	head walls
.3,-.13,-.09,-.09,,	head water
-.27,,.13,.2,-.09,	head wax ring
,.16,-.12,-.16,,	head weatherstrip
-.15,-.16,-.13,.26,,	head whip
.16,-.09,.08,-.11,,	head white
.31,-.15,-.08,,,	head wide
.19,,,,,	head window
.19,,,,,	head window's
,-.18,-.15,.15,,	head windows
.09,.1,,-.18,,	head wire
-.11,,,-.24,.16,	head x
.17,,,,,	joined and imperative
-.18,.26,.1,-.23,,	joined and modal
-.22,,-.1,.21,-.08,	joined and none
.34,-.2,,,,	joined and owed
,-.13,,.13,,	joined and past
,.13,,-.08,,	joined and present
.13,,,,,	joined comma copula
.08,,,,,	joined comma imperative
.16,,,,,	joined comma modal
,.12,,,,	joined comma owed
.16,-.11,,.09,,	joined comma past
,,.08,,,	joined comma present
.12,,,,,	joined run-on copula
,.17,,,,	joined run-on imperative
.13,,,,,	joined run-on modal
.3,-.2,,,,	joined run-on none
,.13,,,,	joined run-on owed
.11,,,,,	joined run-on past
.12,,,,,	joined run-on present
.11,,,,,	joined start copula
.2,,,,,	joined start imperative
.29,-.09,,-.1,,	joined start modal
.35,-.09,,-.11,,	joined start none
.13,,,,,	joined start past
.27,,,,,	joined start present
.11,,,,,	joined stop copula
,.16,,-.09,,	joined stop imperative
,.11,,-.09,,	joined stop modal
,.16,,,,	joined stop owed
,-.1,,,,	joined stop past
.1,,,,,	joined stop present
.1,,,,,	joined word copula
,.1,,,,	joined word imperative
.22,,-.1,,,	joined word modal
,.16,,-.13,,	joined word none
.13,,,,,	joined word owed
,.11,-.08,,,	joined word past
.19,,-.09,,,	joined word present
-.15,,.31,-.12,,	kept
.1,,,,,	last copula other
.09,,,,,	last copula same
,-.09,,,,	last cue back other
,.08,,,,	last cue back same
-.2,.39,-.19,-.27,-.12,	last cue bought same
.12,,,-.08,,	last cue have other
,,,-.1,,	last cue have same
,.25,,-.12,,	last cue need same
.11,.1,,-.1,,	last imperative same
,,,-.08,,	last modal other
.1,,,,,	last modal same
.09,,,,,	last none other
.12,,,,,	last none same
,.11,,-.09,,	last owed other
.09,.09,,-.1,,	last owed same
.11,,,,,	last past other
.19,,,,,	last undefined #
.14,-.15,.13,-.09,,	last use buy imperative other
,.1,-.17,-.21,.13,	last use buy imperative same
,.08,,,,	last use buy past other
-.11,,,-.08,.16,-.12	last use buy past same
,.17,-.15,-.14,,	last use buy present other
,.12,,,,	last use have imperative other
.23,-.2,-.1,.09,,	last use have imperative same
,,-.09,,,	last use measure owed other
.14,,,,,-.09	last use measure owed same
,,-.11,,.16,	last use measure past other
.38,-.14,,-.22,,	last use measure past same
-.1,,.11,,,	last use measure present other
.13,,,,,	last use measure present same
,.11,,-.15,,	last use move imperative other
-.16,.11,.12,-.08,,	last use move imperative same
.24,-.19,,,,	last use move modal same
.12,,,-.09,,	last use move owed same
.17,,,-.09,,	last use move past other
-.13,.08,.19,-.09,,	last use move past same
,-.12,,.2,,	last use move present other
,,-.24,.14,,	last use move present same
,.13,,-.12,,	last use need modal same
.12,,,,,	last use need owed other
,.18,,-.12,,	last use need owed same
.2,,,,,	last use need past other
-.19,.16,-.2,.12,-.1,	last use need past same
.23,,,-.19,,	last use need present same
.17,-.08,,,,	last use null copula other
.26,-.1,,-.11,,	last use null imperative other
-.16,.12,.16,-.18,-.12,-.1	last use null modal other
.08,,,,,	last use null modal same
.09,,,,,	last use null none other
.12,,,,,	last use null none same
.29,-.1,-.09,-.12,,	last use null owed other
,,-.1,-.09,.13,	last use null owed same
.11,,,,,	last use other copula same
.16,,,,,	last use other imperative other
.18,,,-.11,,	last use other imperative same
,-.08,-.13,,,	last use other modal other
,.19,-.11,-.16,-.09,	last use other owed same
,,,,,.09	last use other past other
,,,-.09,,	last use other present other
.1,,,-.16,,	last use other present same
.25,-.09,,,,	last use return past other
.12,,,,,	last use say imperative other
-.25,.26,,,,	last use say imperative same
.2,,,,,	last use say modal same
.11,-.08,,,,	last use say past other
,,.16,-.08,,	last use say past same
-.21,,.24,,,	last use say present other
.08,,,,,	last use say present same
-.2,-.31,.18,-.25,.19,-.12	last use see imperative other
.12,,,,,	last use see imperative same
.11,,,,,	last use see modal other
.19,,,,,	last use see modal same
.21,-.12,,-.12,,	last use see owed same
,.11,,,,	last use see present same
.12,,,,,	last use use past other
-.14,-.13,,.23,-.12,	last use use past same
.22,-.18,-.14,-.09,,	last use use present other
.19,,-.17,-.15,,	last use use present same
,-.14,,,,.1	last use work imperative other
.13,.11,,-.12,,	last use work imperative same
,,,-.17,.14,	last use work modal other
,.09,,,,	last use work modal same
,.21,,-.11,,	last use work owed other
.14,-.1,,,,	last use work owed same
.1,,,,,	last use work past other
.08,-.09,,,,	last use work past same
.09,,-.14,,,	last use work present other
,-.27,-.15,.15,,	last verb add other
.14,,,,,	last verb adjust other
.23,-.12,,-.13,,	last verb adjust same
,.08,,-.1,,	last verb ask other
.34,-.2,,,,	last verb ask same
.12,,,,,	last verb be same
,,,,,.13	last verb bring other
,.2,-.13,-.27,,	last verb bring same
.18,,,,,	last verb buy other
,.21,-.14,-.1,-.1,	last verb buy same
-.3,.23,.22,-.17,,	last verb call same
,.11,,,,	last verb cap other
.23,-.14,-.16,-.14,,	last verb caulk other
,.15,-.12,-.14,,	last verb change other
,.08,,-.12,,	last verb change same
.1,,,,,	last verb check same
-.09,,.19,-.1,,	last verb clamp same
.21,,-.12,-.21,,	last verb close same
.14,,-.11,,,	last verb come other
.22,,,,,	last verb come same
.11,,,,,	last verb cover other
-.39,.24,.08,.19,,	last verb crack same
.33,-.23,,-.16,,	last verb cut other
,,,.1,,	last verb cut same
,-.18,-.19,.14,,	last verb do other
.16,-.09,,-.18,,	last verb doesn't same
.11,,,,,	last verb don't same
.18,,,,,	last verb drill other
.3,-.17,,-.16,,	last verb drill same
,.15,,-.21,,	last verb drip same
.09,-.12,.1,,,	last verb dry same
.24,-.1,-.1,,,	last verb eat same
.24,-.09,,,,	last verb exchange other
.11,,,,,	last verb falta same
,.12,-.13,-.14,,	last verb feather same
-.15,-.09,,.19,,	last verb feed same
,,.12,,,	last verb feel same
-.28,.19,.15,-.17,,	last verb figure same
.22,,,-.13,,	last verb fill same
-.28,-.2,.18,-.18,.32,	last verb find other
,-.14,.17,-.09,,	last verb find same
.23,-.11,-.1,,,	last verb finish other
.28,-.17,-.12,,,	last verb finish same
.09,,,,,	last verb fit other
,.08,,,,	last verb fix other
,-.11,,.15,,	last verb fix same
-.28,.16,-.17,.18,,	last verb frame same
.2,-.15,-.1,-.14,,	last verb fre same
-.18,.18,.11,,,	last verb give same
.27,-.2,,,,	last verb glue other
-.14,,,.09,,	last verb go other
,,-.08,,,	last verb go same
,.1,-.18,,-.08,	last verb gonna same
.25,,,,,-.1	last verb gotta same
.14,,,,,	last verb grab other
.14,,,,,	last verb grind same
.11,,,-.1,,	last verb grout same
.09,,,-.11,,	last verb guess same
-.24,,-.12,.16,,.18	last verb hand same
.08,,,,,	last verb hang other
-.13,,,.19,,	last verb hang same
.17,-.09,,,,	last verb hit same
.24,,-.1,,,	last verb hold other
,-.16,-.1,.12,,	last verb hold same
.12,,,,,	last verb hush same
,.08,,,,	last verb i'll same
,.14,-.11,-.16,,	last verb install other
.09,-.17,.09,-.15,,	last verb keep other
,-.24,.1,.08,,	last verb know same
,-.25,.24,-.27,-.1,	last verb land same
.11,.08,,,,	last verb leave other
-.13,.1,.23,-.2,,	last verb leave same
,-.09,-.09,.1,,	last verb let same
-.17,-.16,,.27,,	last verb like same
-.14,-.13,,,.19,	last verb look other
.15,,,,,	last verb look same
,,,.11,,	last verb lose same
.15,-.09,,,,	last verb make other
.35,-.18,-.09,-.21,,	last verb measure same
.28,-.12,-.09,-.14,,	last verb meter same
,,.11,-.15,-.1,	last verb move other
.09,,,,,	last verb move same
-.08,.18,-.18,-.23,-.1,-.11	last verb nail same
.26,,-.1,,,	last verb need other
,.2,,-.12,,	last verb need same
.32,-.13,-.17,-.11,,	last verb notch same
.11,,,,,	last verb null other
.1,,,,,	last verb null same
.19,,-.21,-.17,,	last verb open same
,,.12,-.19,,	last verb order other
,-.27,-.09,-.12,.25,-.1	last verb order same
.09,-.26,-.22,.19,-.1,	last verb pack same
.28,-.25,,,,	last verb paint same
,.12,,-.1,,	last verb pass same
.16,-.1,,-.09,,	last verb patch other
,,-.1,.19,,	last verb patch same
.15,,,,,	last verb pick other
,.14,-.09,-.14,-.1,	last verb pick same
.12,,,,,	last verb pin other
-.1,.16,,,,	last verb pin same
.19,,,,,	last verb plane same
,.16,-.15,-.17,,	last verb plug same
-.08,,-.12,.22,,	last verb pull same
,-.19,,.15,,	last verb put other
,-.09,.13,,,	last verb put same
.27,-.14,-.13,-.12,,	last verb rack other
-.12,.11,.16,-.22,,	last verb read other
.16,-.19,.09,,,	last verb redo same
.13,,,,,	last verb reorder other
-.1,.26,-.1,-.22,,	last verb replace other
.28,-.27,,-.17,,	last verb replace same
-.15,.21,,,,	last verb rip other
.23,-.09,,-.13,,-.08	last verb rip same
.21,-.18,,-.17,,	last verb roll other
.3,-.13,-.09,-.24,,	last verb roll same
.24,-.15,,-.08,,	last verb run other
,.12,,,,	last verb run same
.08,.13,-.19,-.09,,	last verb sag same
.25,-.22,-.2,,,-.12	last verb sand other
-.29,.15,.12,,,.15	last verb sand same
.15,-.12,.1,-.12,,	last verb say other
.24,,,,,	last verb say same
-.2,.08,,.18,,	last verb scrape same
.13,,,,,	last verb screw other
.11,,,,,	last verb screw same
.22,-.11,-.11,,,	last verb scribe other
,-.12,-.15,-.17,.21,	last verb seal other
.24,-.1,,,,	last verb seal same
.12,,,,,	last verb see other
.26,-.09,,-.08,,	last verb see same
.21,,,-.18,,	last verb send other
.15,,-.08,-.11,,	last verb send same
.23,-.1,,,,	last verb set other
-.09,,,.15,,	last verb set same
-.16,.12,,-.09,,.17	last verb shim other
-.1,,-.11,.19,,	last verb shim same
-.11,.21,-.11,-.28,,	last verb show same
.13,,,,,	last verb sign other
,,.08,,,	last verb sign same
.17,,,,,	last verb sister other
.28,-.2,-.08,-.1,,-.08	last verb sit same
.29,,,-.12,,	last verb snake same
,,,.13,,	last verb snap same
.21,,,-.08,,	last verb sort other
-.19,.2,,,,	last verb squeak same
.26,-.19,,-.09,,	last verb start other
.22,-.19,,,,	last verb start same
.09,,,,,	last verb stick other
.1,-.22,.15,,,	last verb stick same
.1,,,,,	last verb stop other
-.17,,-.23,-.17,.24,-.09	last verb stop same
-.15,.13,,.09,,	last verb strip same
,,-.09,,,.09	last verb swap other
,-.09,.1,,,	last verb swap same
.13,,,,,	last verb swear same
,.11,,,,	last verb sweat same
.13,,,,,	last verb swing same
.14,,,,,	last verb take other
.1,.08,,-.15,,	last verb take same
.18,,,,,	last verb tape same
.25,,,-.15,,	last verb tear same
-.17,-.09,.23,,,	last verb tell other
.22,-.1,,,,	last verb tell same
-.1,,-.19,.18,,	last verb think other
,-.2,,.12,,	last verb think same
,.14,-.08,-.11,-.13,	last verb throw same
-.08,.18,-.1,-.11,,	last verb tighten other
.27,-.2,,-.22,,	last verb top same
-.11,-.09,,.16,,	last verb trace same
,.11,,,,	last verb trim other
.29,-.11,-.22,,,-.08	last verb try same
-.09,-.09,.2,-.26,-.09,	last verb turn same
.24,-.15,,,,	last verb use other
-.1,-.12,,.21,-.11,	last verb use same
.21,-.11,,-.14,,	last verb wait other
-.13,.2,-.1,-.17,,	last verb wait same
,,-.11,-.11,,	last verb walk same
-.17,-.1,,-.16,.19,	last verb wanna same
-.22,-.15,.22,-.1,.15,	last verb want other
,,-.08,,,	last verb want same
.24,-.11,-.1,-.11,,	last verb wire same
.16,,-.08,,,	last verb work same
.09,,,,,	left #
.09,,,,,	left # #
.22,,,-.13,,	left # G
.19,,,,,	left # N
-.08,-.34,.26,-.2,,	left # Q
.13,.13,-.24,-.4,,	left # about
.14,-.09,,-.08,,	left # add
-.16,,.13,.09,,	left # all
-.09,.19,-.1,,,	left # bring
,.08,-.09,-.1,,-.19	left # buy
,-.15,-.11,.17,,	left # cut
-.11,.19,-.12,-.2,-.09,-.09	left # figure
.15,,,,,	left # for
,.12,,-.23,,-.1	left # get
-.13,,-.09,-.13,.15,	left # grab
-.11,-.15,.29,-.14,,	left # have
.22,-.12,,-.09,,	left # hit
.13,,,,,	left # i
.16,,,,,	left # i'll
.2,-.1,-.15,-.12,,	left # i'm
.14,,,,,	left # in
.1,,,,,	left # it
,.11,,-.09,,	left # it's
.22,,-.1,,,	left # just
.19,,,,,	left # kitchen
.13,-.08,,-.09,,	left # leave
.18,,,,,	left # let
.21,-.11,,,,	left # living room
,.17,,,,	left # need
.3,-.13,,,,	left # of
,,,,-.15,	left # order
,,,-.2,,	left # put
,,-.11,,-.09,-.09	left # run
-.3,.36,-.17,-.17,,	left # short
,-.28,-.18,.2,,	left # that's
-.1,-.2,.24,-.24,-.08,-.08	left # the
.09,-.15,.2,-.14,,	left # there's
-.18,.25,-.15,-.18,-.1,	left # throw
,-.13,,.2,,	left # use
.19,-.11,-.1,-.17,,	left # want
-.11,.19,-.12,-.1,,	left # we're
-.13,.16,,,,	left &
-.12,,-.16,,-.09,.14	left (
-.11,,-.09,.16,,	left +
.23,,,,,	left /
.19,-.08,,,,	left 1 /
.29,,,-.16,,	left @
.22,-.15,,,,	left G
-.19,.16,,-.11,.18,	left G +
-.29,.26,,.09,,	left G and
.19,-.08,,,,	left G at
.12,,,,,	left G by
.27,-.18,,,,	left G for
.24,,-.13,,,	left G has
.3,,-.26,,,	left G have
.22,-.09,,,,	left G in
.28,-.14,,,,	left G is
.08,,-.15,-.23,-.08,-.09	left G miss
-.15,-.1,,.21,,	left G of
.2,-.1,,,,	left G off
.12,,,,,	left G over
.11,,,,,	left G read
.16,,,-.09,,	left G under
,-.18,-.08,.13,,	left G with
.11,,,,,	left N
-.32,,-.11,,.1,	left N and
.2,,,,-.08,	left N for
,-.12,,-.11,,.17	left N of
,,.1,-.19,,	left Q
,-.21,,.17,,	left Q G
.22,-.18,,,,	left Q Q
,.13,-.15,,,	left Q and
.13,,,,,	left Q at
.12,,,,,	left Q below
.17,,,,,	left Q by
.1,,,,,	left Q for
.11,,,,,	left Q from
.27,,,-.2,,	left Q in
.26,,,-.13,,	left Q of
.16,,,,,	left Q off
.24,-.1,,-.09,,	left Q on
.29,-.12,,-.12,,	left Q over
.21,,-.09,,,	left Q to
.12,-.12,,,,	left Q with
.1,-.18,,,.08,	left T
.14,,-.18,,,	left T at
-.12,.17,,-.11,,	left T with
.12,,,,,	left a
,,,-.08,,	left about
.15,,,,,	left above
,,,-.09,,	left add
.16,,,,,	left after
-.1,,,.17,,	left all
.13,,,,,	left along
-.13,.19,,,,	left and
.21,,,-.1,,	left are
-.08,-.21,,.15,,	left are in
.18,,,-.08,,	left around
.23,-.14,,-.12,,	left as
.21,,,,,	left at
.23,,-.08,-.12,,	left back
,-.08,.14,,,	left back to
.09,,,-.15,,	left be
.26,-.11,,,,	left before
.18,,,,,	left behind
.11,,,,,	left below
.19,,,,,	left between
.08,,-.1,-.09,,	left bring
-.31,.34,,,,	left bring me
-.2,-.14,-.09,.27,,	left burn through
-.18,,-.13,-.19,.11,.12	left buy
.17,,,,,	left by
.16,,,,,	left can
.18,,,,,	left can't
-.13,.16,-.1,.08,,	left change
.23,,-.09,,,	left check
.12,,,,,	left close
.13,,,,,	left come out
.26,-.19,,-.24,-.12,	left come up
,-.12,.13,,,	left cut
.11,,,,,	left dining room
.09,,-.15,.1,-.08,	left do
.17,-.13,,,,	left down
,-.29,.28,-.2,,	left down to
.23,-.1,-.1,-.18,,	left drill
.24,-.1,,-.14,,	left drop
.17,,,,,	left each
,-.23,-.17,.26,,	left eat
,.19,,-.13,,	left em
,-.1,,,,	left every
.18,,,,,	left except
,.18,-.19,-.24,-.09,-.09	left figure
.09,-.09,,,,	left find
.13,,,,,	left finish
.15,,,,,	left for
.19,,,,,	left from
-.09,,.2,-.13,,	left get
-.11,.21,-.11,-.1,,	left get me
.16,,,,,	left get to
.1,,-.14,,,	left go
-.23,-.09,-.09,.31,,	left go through
.19,-.1,,,,	left gonna
-.36,.41,-.14,-.1,,	left gonna want
.21,,,,,	left gotta
.21,-.1,,,,	left gotta be
-.19,.16,-.1,-.13,.12,	left grab
.14,-.1,-.09,,,	left grab me
.14,,,,,	left hall
,-.11,-.1,.17,,	left hang
.13,-.19,.11,-.09,,	left has
,-.1,.16,,,	left have
.26,,-.11,,,	left have to
.23,-.09,,,,	left hit
.27,-.09,,-.18,,	left hold
.18,,,,,	left i
.15,,,,,	left i can
-.14,,.34,-.18,-.1,	left i get
.18,-.08,,,,	left i gotta
-.11,,,.14,,	left i hang
-.21,-.09,.22,,,	left i have
,.22,,,,	left i need
,-.12,-.08,.11,,	left i put
-.18,-.16,-.08,.23,,	left i run
-.13,-.09,,.3,,	left i use
.16,,,,,	left i'll
.21,-.1,-.14,-.11,,	left i'm
-.14,-.18,.23,-.11,-.11,	left i've get
.17,,,,,	left if
.09,,-.09,.08,,	left in
.22,,,-.14,,	left in at
.16,,,-.08,,	left into
.17,,,-.12,,	left is
.19,,,-.11,,	left it
.14,,,,,	left it before
.12,,,,,	left it on
-.08,.12,,,,	left it want
-.17,-.13,-.12,.29,,	left it with
,.09,,-.1,,	left it's
-.21,.12,-.22,.18,-.12,	left it's get
,.16,,-.13,,	left its
.31,-.19,,,,	left just
.19,-.1,,,,	left keep
,.1,,-.1,,	left kitchen
.28,-.2,,-.27,,	left last
-.24,-.09,-.12,.27,-.08,-.08	left lay
,-.09,.14,-.09,,	left leave
.18,,,,,	left let
.21,-.11,,-.11,,	left like
.2,-.08,,,,	left living room
.14,-.09,,,,	left look at
.25,-.11,,,,	left lose
.23,-.14,,,,	left make
-.22,-.15,.31,-.1,,-.08	left maybe
,.13,-.1,,,	left me
-.1,.27,-.09,-.15,,	left miss
.21,-.12,,,,	left move
,.17,,,,	left need
-.18,.23,-.13,,-.08,-.09	left new
.24,-.12,,,,	left not
.09,-.09,.1,-.14,,	left now
,,,.12,,	left of G
.27,,-.12,-.21,,	left of the
.1,,,,,	left off
.16,,,,,	left on
,-.29,-.15,.09,,	left on all
-.12,.15,,,,	left on it
.2,-.08,,,,	left once
,-.27,.25,-.2,,-.08	left only
,,-.11,-.12,,	left order
.16,-.15,,,,	left out
.14,,,,,	left out at
.11,,,-.13,,	left out of
.22,,,,,	left over
.15,,,-.13,,	left paint
.21,,,,,	left pass
.26,-.12,,-.1,,	left past
-.09,.15,-.08,-.09,-.09,	left pick
,.11,-.16,-.26,.18,	left pick up
.09,,,,,	left pull
-.22,-.23,-.24,.33,-.09,	left put in
.28,-.15,,-.12,,	left read
,-.1,-.17,,,	left replace
-.22,-.17,-.21,-.22,-.16,.32	left return
,,-.09,.13,,	left run
.23,,-.09,,,	left say
.2,-.13,,-.08,,	left scribe
.12,,,,,	left see
-.21,,,-.19,-.11,.21	left send
,-.22,-.17,.2,,	left set
,.08,,,,	left she want
.22,,,-.12,,	left shim
-.36,.46,-.16,-.15,,	left short
.14,-.17,-.08,,,	left sister
.25,-.09,-.11,-.14,,	left sit in
.1,,,,,	left size of
.15,,,,,	left so
.14,,,,,	left start
-.11,.16,-.13,,,	left still need
,-.14,,.11,,	left swap
-.08,-.17,-.24,.11,-.1,.19	left take
.16,,,,,	left than
.12,,,,,	left that
,-.29,-.17,.19,,	left that's
.11,-.26,.18,-.08,,	left the
.15,,,,,	left the G
.11,,,,,	left the leave
.24,-.13,,,,	left there
.32,-.19,-.2,-.18,,	left there be
,-.14,.21,-.13,,	left there's
,,-.13,-.11,-.1,.09	left they send
,,.14,-.1,,	left those and
-.1,-.11,-.11,.31,,	left through
-.2,.23,-.16,,-.1,	left throw
.12,-.11,.11,,,	left to
.25,-.09,,,,	left to be
.19,-.15,,,,	left to move
.12,,,,,	left to pull
,-.09,.1,-.2,-.12,-.13	left try
.17,,,,,	left under
.12,,,,,	left until
,,-.12,,,	left up
.11,,,,,	left up at
.25,,-.08,-.15,,	left up to
.08,-.08,-.09,,,	left up with
,.12,-.09,,,	left us
-.09,,,.24,,	left use
-.09,.16,,,,	left wait on
.12,,,,,	left wall to
,.12,-.1,-.12,,	left want
.15,,,,,	left we
.17,-.18,-.33,.16,-.08,	left we get
-.25,,.34,-.2,,	left we have
-.22,.34,,,,	left we need
-.18,-.12,,.32,,	left we use
-.11,.19,-.12,-.1,,	left we're
.14,,,,,	left weep at
.13,,,,,	left when
.16,,,,,	left where
,,,.13,,	left with
.32,-.24,-.1,-.12,,	left without
.19,,,,,	left won't
.27,-.21,-.13,-.17,-.15,	left you
.09,,,,,	left1 #
.09,,,,,	left1 #.
-.13,.16,,,,	left1 &
-.12,,-.16,,-.09,.14	left1 (
-.11,,-.09,.16,,	left1 +
.23,,,,,	left1 /
.29,,,-.16,,	left1 @
.22,-.15,,,,	left1 G
.11,,,,,	left1 N
.11,,,,,	left1 N.
,,.1,-.19,,	left1 Q
,,.1,-.19,,	left1 Q.
.1,-.18,,,.08,	left1 T
.1,-.18,,,.08,	left1 T.
.12,,,,,	left1 a
,,,-.08,,	left1 about
.15,,,,,	left1 above
,,,-.09,,	left1 add
.16,,,,,	left1 after
-.1,,,.17,,	left1 all
.13,,,,,	left1 along
-.13,.19,,,,	left1 and
.21,,,-.1,,	left1 are
.18,,,-.08,,	left1 around
.23,-.14,,-.12,,	left1 as
.21,,,,,	left1 at
.23,,-.08,-.12,,	left1 back
.09,,,-.15,,	left1 be
.26,-.11,,,,	left1 before
.18,,,,,	left1 behind
.11,,,,,	left1 below
.19,,,,,	left1 between
.08,,-.1,-.09,,	left1 bring
-.18,,-.13,-.19,.11,.12	left1 buy
.17,,,,,	left1 by
.16,,,,,	left1 can
.18,,,,,	left1 can't
-.13,.16,-.1,.08,,	left1 change
.23,,-.09,,,	left1 check
.12,,,,,	left1 close
,-.12,.13,,,	left1 cut
.11,,,,,	left1 dining room
.09,,-.15,.1,-.08,	left1 do
.17,-.13,,,,	left1 down
.23,-.1,-.1,-.18,,	left1 drill
.24,-.1,,-.14,,	left1 drop
.17,,,,,	left1 each
,-.23,-.17,.26,,	left1 eat
,.19,,-.13,,	left1 em
,-.1,,,,	left1 every
.18,,,,,	left1 except
,.18,-.19,-.24,-.09,-.09	left1 figure
.09,-.09,,,,	left1 find
.13,,,,,	left1 finish
.15,,,,,	left1 for
.19,,,,,	left1 from
-.09,,.2,-.13,,	left1 get
.1,,-.14,,,	left1 go
.19,-.1,,,,	left1 gonna
.21,,,,,	left1 gotta
-.19,.16,-.1,-.13,.12,	left1 grab
.14,,,,,	left1 hall
,-.11,-.1,.17,,	left1 hang
.13,-.19,.11,-.09,,	left1 has
,-.1,.16,,,	left1 have
.23,-.09,,,,	left1 hit
.27,-.09,,-.18,,	left1 hold
.18,,,,,	left1 i
.16,,,,,	left1 i'll
.21,-.1,-.14,-.11,,	left1 i'm
.17,,,,,	left1 if
.09,,-.09,.08,,	left1 in
.16,,,-.08,,	left1 into
.17,,,-.12,,	left1 is
.19,,,-.11,,	left1 it
,.09,,-.1,,	left1 it's
,.16,,-.13,,	left1 its
.31,-.19,,,,	left1 just
.19,-.1,,,,	left1 keep
,.1,,-.1,,	left1 kitchen
.28,-.2,,-.27,,	left1 last
-.24,-.09,-.12,.27,-.08,-.08	left1 lay
,-.09,.14,-.09,,	left1 leave
.18,,,,,	left1 let
.21,-.11,,-.11,,	left1 like
.2,-.08,,,,	left1 living room
.25,-.11,,,,	left1 lose
.23,-.14,,,,	left1 make
-.22,-.15,.31,-.1,,-.08	left1 maybe
,.13,-.1,,,	left1 me
-.1,.27,-.09,-.15,,	left1 miss
.21,-.12,,,,	left1 move
,.17,,,,	left1 need
-.18,.23,-.13,,-.08,-.09	left1 new
.24,-.12,,,,	left1 not
.09,-.09,.1,-.14,,	left1 now
.1,,,,,	left1 off
.16,,,,,	left1 on
.2,-.08,,,,	left1 once
,-.27,.25,-.2,,-.08	left1 only
,,-.11,-.12,,	left1 order
.16,-.15,,,,	left1 out
.22,,,,,	left1 over
.15,,,-.13,,	left1 paint
.21,,,,,	left1 pass
.26,-.12,,-.1,,	left1 past
-.09,.15,-.08,-.09,-.09,	left1 pick
.09,,,,,	left1 pull
.28,-.15,,-.12,,	left1 read
,-.1,-.17,,,	left1 replace
-.22,-.17,-.21,-.22,-.16,.32	left1 return
,,-.09,.13,,	left1 run
.23,,-.09,,,	left1 say
.2,-.13,,-.08,,	left1 scribe
.12,,,,,	left1 see
-.21,,,-.19,-.11,.21	left1 send
,-.22,-.17,.2,,	left1 set
.22,,,-.12,,	left1 shim
-.36,.46,-.16,-.15,,	left1 short
.14,-.17,-.08,,,	left1 sister
.15,,,,,	left1 so
.14,,,,,	left1 start
,-.14,,.11,,	left1 swap
.16,,,,,	left1 t area.
.22,,,-.11,,	left1 t defect.
.24,,,-.1,,	left1 t fixture.
.19,-.12,,,,	left1 t material.
.31,-.15,,-.08,,	left1 t part.
.26,-.11,,,,	left1 t role.
.2,-.13,-.1,,,	left1 t surface.
-.08,-.17,-.24,.11,-.1,.19	left1 take
.16,,,,,	left1 than
.12,,,,,	left1 that
,-.29,-.17,.19,,	left1 that's
.11,-.26,.18,-.08,,	left1 the
.24,-.13,,,,	left1 there
,-.14,.21,-.13,,	left1 there's
-.1,-.11,-.11,.31,,	left1 through
-.2,.23,-.16,,-.1,	left1 throw
.12,-.11,.11,,,	left1 to
,-.09,.1,-.2,-.12,-.13	left1 try
.17,,,,,	left1 under
.12,,,,,	left1 until
,,-.12,,,	left1 up
,.12,-.09,,,	left1 us
-.09,,,.24,,	left1 use
-.14,.15,-.11,-.15,.13,	left1 v buy.
,-.1,.16,,,	left1 v have.
.29,-.13,,,,	left1 v measure.
.09,,.09,,,	left1 v move.
,.18,,-.08,,	left1 v need.
-.22,-.17,-.21,-.22,-.16,.32	left1 v return.
.17,.1,,-.15,,	left1 v say.
.2,,,,,	left1 v see.
-.09,,,.24,,	left1 v use.
.19,,,,,	left1 v work.
.1,,,,,	left1 w.
,.12,-.1,-.12,,	left1 want
.15,,,,,	left1 we
-.11,.19,-.12,-.1,,	left1 we're
.13,,,,,	left1 when
.16,,,,,	left1 where
,,,.13,,	left1 with
.32,-.24,-.1,-.12,,	left1 without
.19,,,,,	left1 won't
.27,-.21,-.13,-.17,-.15,	left1 you
.09,,,,,	left2 #
.09,,,,,	left2 #.
.19,-.08,,,,	left2 1
.1,,,,,	left2 G
-.12,,,,,	left2 N
-.12,,,,,	left2 N.
.18,,,,,	left2 Q
.18,,,,,	left2 Q.
.15,,,,,	left2 T
.15,,,,,	left2 T.
,.15,-.11,-.15,,	left2 a
.17,,,,,	left2 all
,-.09,.19,-.09,-.13,	left2 already
.14,,,,,	left2 and
-.08,,,.12,,	left2 are
.15,,,,,	left2 ask
.29,,,-.15,,	left2 at
.15,,,-.09,,	left2 away
.22,-.1,,-.12,,	left2 back
.28,,,-.12,,	left2 be
.15,,,,,	left2 before
,-.1,,.16,,	left2 block
.2,,,,,	left2 bolt
.24,-.09,-.09,-.15,,	left2 bottom
.21,.12,-.2,-.16,,	left2 box
-.28,.26,.12,,,	left2 bring
-.17,-.13,-.08,.25,,	left2 burn
,,-.09,-.17,,	left2 by
.35,-.13,-.16,-.2,,	left2 call
.16,-.2,-.11,.09,,	left2 can
.18,-.14,-.1,,,	left2 can't
-.24,,-.09,.28,,	left2 cap
.2,,,-.09,,	left2 ceiling
.23,-.11,,-.16,,	left2 clean
.24,,,-.11,,	left2 close
,-.25,-.11,.1,.11,	left2 come
.11,,,,,	left2 corner
,.24,,-.26,,	left2 could
.12,,,,,	left2 crack
.11,-.18,,,,	left2 cut
,.1,,-.08,,	left2 do
.18,,,,,	left2 don't
,-.15,.21,-.17,,	left2 down
.18,,,,,	left2 drip
.19,,,-.1,,	left2 electrician
.1,,,,,	left2 except
,,,.13,,	left2 finish
.19,,,-.09,,	left2 floor
.09,,-.1,-.11,.14,	left2 for
.2,,,,,	left2 frame
.27,-.11,-.14,-.11,,	left2 from
,,-.12,.12,,	left2 gap
,.1,,-.08,,	left2 get
,-.11,,.12,,	left2 go
,-.1,.14,-.13,-.09,	left2 gonna
.28,-.09,-.12,,,	left2 good
,.11,-.08,-.09,,	left2 gotta
.12,,-.09,,,	left2 grab
,.14,.13,-.3,,	left2 hang
.12,,-.32,.15,,	left2 has
-.09,-.14,.2,,,	left2 have
.19,,,,,	left2 he
.13,,,,,	left2 hole
.22,-.1,,,,	left2 homeowner
.27,-.17,,,,	left2 hook
.19,,,-.1,,	left2 house
,,,.13,,	left2 i
.09,,.09,-.12,,	left2 i'll
,.32,-.18,-.17,,	left2 i'm
-.19,-.16,.19,,,	left2 i've
.18,-.1,,,,	left2 if
.33,-.11,,-.14,,	left2 in
.21,-.18,,,,	left2 inspector
.09,,,-.1,,	left2 is
.09,,,,,	left2 it
,,-.12,.08,,	left2 it's
,.09,,,,	left2 its
.17,,,,,	left2 leak
.26,,-.18,-.12,,	left2 leave
.13,,,,,	left2 look
.17,,,,,	left2 loose
,,-.12,-.15,,	left2 make
,-.09,,.13,,	left2 mark.
.1,,-.08,-.11,,	left2 me
.16,,,,,	left2 more
.08,,,,,	left2 mud
,.08,,,,	left2 must
-.12,,.21,-.19,,	left2 need
.22,-.11,,,,	left2 no
.15,,,,,	left2 nobody
-.14,.2,,-.17,,	left2 not
.15,,,,,	left2 nothing
,-.16,-.08,.15,,	left2 now
.23,,,,,	left2 of
,.2,-.11,-.19,,-.08	left2 off
.13,,-.08,,,	left2 on
-.12,-.15,,.14,,	left2 only
.19,,,,,	left2 open
.2,,,-.15,,	left2 out
-.09,.09,-.29,-.3,.15,-.15	left2 owe
,.11,-.16,-.25,.17,	left2 pick
.13,,,,,	left2 piece
,.11,,-.15,,	left2 pipe
-.08,,,.16,,	left2 plumber
-.23,-.22,-.2,.38,-.08,	left2 put
-.15,,,.19,,	left2 replace
.14,,,,,	left2 right
.21,,,,,	left2 run
,.11,,-.23,,	left2 screw
.37,-.2,-.1,-.31,,	left2 set
.18,,,-.08,,	left2 sheath
,.19,-.11,-.18,,	left2 short
.26,,,-.16,,	left2 side
.22,,,-.1,,	left2 sit
.1,,,,,	left2 size
-.14,,,,,.18	left2 soft
.14,,-.11,-.14,,-.09	left2 somebody
.25,,,-.19,,	left2 splice
.13,,,,,	left2 split
.21,-.18,,,,	left2 stain
-.09,.08,.11,-.13,,	left2 still
-.15,-.17,-.08,.26,,	left2 swap
.1,,,,,	left2 t area.
.2,,,,,	left2 t defect.
.11,,,,,	left2 t finish.
.22,-.09,-.08,,,	left2 t fixture.
.1,,,,,	left2 t material.
.11,,,-.1,,	left2 t part.
.24,-.09,,,,	left2 t role.
.19,,,,,	left2 t surface.
.14,-.11,.09,-.21,,	left2 t tool.
.24,,,,,	left2 t work.
.09,,,,-.1,-.12	left2 take
-.09,.18,-.19,,,	left2 tape
.17,,,-.08,,	left2 tear
.18,-.14,,,,	left2 tell
-.22,.1,-.09,.17,,	left2 that
.1,-.19,-.13,,,	left2 that's
,,-.09,,,	left2 the
,,-.12,-.1,,	left2 the lady
,,.08,-.11,,	left2 there
-.18,-.17,.31,-.3,,	left2 there's
.11,,-.11,-.11,,	left2 they
,,.08,,,	left2 think
,-.09,.1,,,	left2 those
.12,-.11,-.08,,,	left2 through
.17,,,,,	left2 tile
.14,,,-.09,,	left2 to
.25,-.09,,-.11,,	left2 top
.19,,-.14,,,	left2 trim
.21,-.09,,,,	left2 under
.14,,,,,	left2 up
.21,-.08,,,,	left2 upstairs
,,-.1,-.09,,-.09	left2 v buy.
-.09,-.14,.2,,,	left2 v have.
,-.18,-.1,,,	left2 v measure.
,-.1,,,,	left2 v move.
,,.18,-.18,,	left2 v need.
,.09,,,,	left2 v other.
.18,,,-.09,,	left2 v say.
.19,,,,,	left2 v see.
,,,.19,,	left2 v work.
.08,,,,,	left2 w.
,.13,,,,	left2 wait
.12,,,,,	left2 wall
.23,-.13,-.09,,,	left2 want
.19,,,-.08,,	left2 water
.09,,,,,	left2 we
,.18,-.11,-.17,,	left2 we're
.14,,,,,	left2 weep
.21,-.09,,,,	left2 which
.25,-.11,,-.14,,	left2 wide
-.27,.34,-.09,-.12,-.08,	left2 will
.25,-.11,,-.14,,	left2 wire
-.19,-.12,-.15,.29,,	left2 with
.33,,,-.2,,	left2 you
.09,,,,,	left3 #
.13,,,,,	left3 -
.12,,,,,	left3 G
,,.16,-.11,,	left3 N
.13,,,,,	left3 Q
.12,-.18,,.09,,	left3 T
,-.09,.12,-.12,,	left3 about
-.2,,.13,.09,,	left3 all
.24,-.13,,,,	left3 and
-.15,-.14,,.26,,	left3 are
.14,,,,,	left3 ask
,,,-.11,,	left3 back
.23,,,,,	left3 be
.25,-.18,,-.09,,	left3 before
,.15,,-.08,,	left3 by
.19,-.11,,,,	left3 can
.25,,-.18,-.13,,	left3 come
.15,,,,,	left3 crack
.2,,,,,	left3 do
,-.11,-.16,.17,,	left3 down
.19,,,,,	left3 drop
.1,,,,,	left3 dump
.21,-.11,,-.1,,	left3 electrician
-.11,-.1,-.15,.17,,-.08	left3 every
.09,,,,,	left3 finish
.1,,-.09,-.12,,	left3 floor
.38,-.12,-.13,-.27,,	left3 for
.24,,-.09,-.08,,	left3 get
.17,-.09,-.1,,,	left3 go
.28,-.16,,-.1,,	left3 gotta
.19,,,-.13,,	left3 hall
,,,.14,,	left3 hang
,.13,-.08,,,	left3 has
.18,-.18,,,,	left3 have
.14,,,,,	left3 he
-.13,.18,,,,	left3 hinge
,,,.09,,	left3 hit
,-.14,,.16,,	left3 hold
.12,,,,,	left3 i
.26,-.17,,-.15,,	left3 i'll
,-.15,.22,-.11,,	left3 i'm
.33,-.26,,,,	left3 if
,-.09,,,,	left3 in
.12,.12,,-.12,,	left3 is
.16,-.13,-.09,.09,,	left3 it
.12,-.14,-.13,.14,,	left3 it's
-.19,-.25,.19,,-.14,-.12	left3 just
.16,,,,,	left3 kitchen
.12,,,,,	left3 leak
,-.1,.16,-.12,,	left3 leave
.23,,,-.08,,	left3 like
.12,,,-.13,,	left3 me
-.15,.25,-.1,,,	left3 need
.23,-.13,,,,	left3 new
-.11,.12,.09,,,	left3 no
.29,-.1,,-.14,,	left3 nobody
.17,,,,,	left3 not
.27,-.18,-.15,-.13,,	left3 off
,.17,-.09,-.14,,	left3 on
.25,,-.14,-.18,,	left3 only
.21,,,-.12,,	left3 out
,.11,,-.11,,	left3 put
.14,-.08,,,,	left3 right
.24,,,-.1,,	left3 run
.17,,,,,	left3 say
-.19,.19,-.15,-.16,-.09,.09	left3 send
.12,-.09,,,,	left3 set
.28,.12,-.11,-.25,-.17,	left3 she
.29,-.09,-.09,-.11,,	left3 she's
.1,,,,,	left3 sit
-.2,.17,.16,-.13,,	left3 somebody
.19,-.1,,,,	left3 somebody's
-.17,.16,-.19,-.16,.14,	left3 still
.19,,,,,	left3 take
,,,.08,,	left3 tape
,-.17,-.14,.23,,	left3 that
,-.08,-.1,.15,,	left3 that's
.14,,,,,	left3 the
.2,,,,,	left3 there's
.32,-.1,-.12,-.14,,	left3 they
,.09,-.13,,,	left3 till
,-.14,,,.12,	left3 to
.16,,-.16,,,	left3 up
.09,,,,,	left3 upstairs
.16,-.08,,,,	left3 want
,,-.11,,,	left3 we
.12,,,,,	left3 we're
-.09,,-.09,.11,,	left3 with
.24,-.09,,-.09,,	left3 you
,.16,-.18,-.17,,	length after need here
-.16,.31,-.13,-.2,,	length after need sentence
.16,,,-.2,,	length after none far
.3,-.1,,-.16,,	length after none here
,.14,-.14,,,	length after none sentence
.19,,-.11,-.14,,	length after used far
,-.29,.29,-.37,,-.08	length after used sentence
-.2,,.26,-.09,,	length cue have
,.2,-.12,-.24,,	length cue need
-.13,-.17,,.26,,	length cue used
.24,-.18,-.12,,,	length flawed
-.13,,.14,-.26,,	length kept
-.16,.12,-.19,.2,,	length left #
.09,-.19,,,,	length left in
.25,-.18,,,,	length left is
-.13,.26,,,,	length left need
.23,,,-.14,,	length left over
.18,,,-.2,,	length name flawed
-.11,,-.15,.15,,	length named before part
.24,,,-.15,,	length named before surface
.58,-.33,-.15,-.31,,	length named before word
-.12,.1,.1,,,	length named here material
-.19,.1,-.2,.19,-.1,-.09	length named here word
-.13,.25,,,,	length need owed behind
,,-.08,,,	length null copula behind
.26,-.19,,-.21,,	length other copula behind
.12,,-.15,-.15,-.1,	length other imperative behind
,,-.11,.08,,	length other modal behind
-.17,-.3,.11,.2,-.08,	length pointing
,.12,,,,	length right #
-.25,.31,,,,	length right and
.32,-.12,,-.14,,	length right by
-.17,-.3,.11,.2,-.08,	length right of
,-.28,-.14,.16,,	length right up
.13,-.12,,,,	length says copula behind
.24,-.13,-.12,-.18,,	length says imperative behind
-.16,.22,-.11,,,	length says modal behind
,.22,,-.11,,	length says owed behind
-.18,-.14,.09,.22,,	length says past behind
,.2,-.13,-.22,,	length says present behind
-.33,.13,-.12,.3,,	length sized
,,.08,,,	length sold so false
-.19,.3,-.1,,,	length sold so true
-.17,,-.1,.21,,	length use past behind
.26,-.19,,-.21,,	length verb be behind
-.28,.11,.21,-.25,,	length verb get behind
-.21,.32,,,,	length verb need behind
,,-.08,,,	length verb null behind
-.17,,-.1,.21,,	length verb use behind
-.17,.27,,-.21,,	length verb want behind
-.27,.34,-.18,,-.08,	length whole clause
,-.17,-.12,.21,,	length work past behind
-.36,-.44,.48,-.4,-.2,-.11	list have
-.31,.51,-.27,-.34,-.09,	list need
.34,-.27,,,,	many
-.3,.43,-.12,,,	marked
.16,,,,,	meant back 0
-.15,.13,.15,-.09,,	meant back 4
.27,-.31,,,,	meant back 5
.41,-.23,-.16,-.34,,	meant back 6
.16,-.12,-.22,,-.09,	meant back 7
.37,,-.3,-.23,-.1,-.1	meant back 8
.12,-.27,-.12,.12,,	meant before new
-.19,.23,-.08,-.09,,	meant before no
.24,-.16,,-.11,,	meant flawed false
,.2,,-.11,,	meant flawed true
.16,,,,,	meant place here
,,,.09,,	meant place subject
-.32,.38,-.13,-.19,-.11,	meant ran out
,.22,,-.12,,	more
,-.14,-.14,.08,,	named before area
.1,,,,,	named before part
.32,-.14,-.11,,,	named before surface
-.19,,.23,-.18,-.1,-.09	named before tool
.19,,,-.09,,	named before word
,-.13,-.09,.24,,	named here area
.24,,,,,	named here defect
.09,.09,,,,	named here finish
.18,,,,,	named here fixture
.15,,-.08,-.08,,	named here role
.19,,,,,	named here surface
,.11,,-.08,,	named here tool
.17,,,,,	named here word
.27,,-.1,,,	named here work
.41,,-.16,-.29,-.09,	nameless
.2,,,,,	new line
,,,.13,,	next copula same and
.26,-.15,,,,	next copula same comma
,,,.08,,	next copula same run-on
.18,-.13,-.08,-.13,,.11	next copula same stop
.19,,,,,	next copula same word
-.09,,-.13,.19,,	next cue back other
-.09,,,,,.14	next cue back same
,.17,,-.13,,	next cue bought other
,-.24,-.29,-.26,.25,.13	next cue bought same
.1,,-.08,.11,,	next cue have other
.14,-.18,,,,	next cue need other
.15,-.13,,,,	next imperative other stop
.28,-.1,,-.09,,	next imperative same and
.09,.11,,-.16,,	next imperative same comma
.14,,,,,	next imperative same run-on
.15,,-.1,,,	next imperative same word
,.12,,,,	next modal other stop
,.18,,-.09,,	next modal same and
.13,,,,,	next modal same comma
.16,,-.08,,,	next modal same run-on
,.26,,-.09,,	next none same and
.3,,-.09,-.1,,	next none same run-on
.28,,,,,	next none same stop
.21,,,-.14,,	next none same word
,-.17,,,,	next owed other stop
.11,,,,,	next owed same and
.11,,,-.09,,	next owed same comma
.2,,,-.11,,	next owed same run-on
.2,,,-.08,,	next past other stop
,-.12,-.1,.23,,	next past same and
.13,-.1,,,,	next past same comma
,,.08,,,	next past same run-on
.28,,,,,	next past same stop
.24,-.09,,-.1,,	next past same word
.12,,,,,	next present other stop
-.1,,,.15,,	next present same and
.16,,,-.11,,	next present same comma
.11,,,,,	next present same run-on
.28,-.13,-.1,-.13,,	next present same stop
.33,-.13,,,,	next present same word
,.13,,-.08,,	next undefined # undefined
,-.2,,,,	next use buy imperative other
-.19,.29,,-.14,,	next use buy imperative same
-.26,.33,-.11,-.18,,	next use buy modal same
.24,-.13,,-.09,,	next use buy past other
,-.15,,,.21,	next use buy past same
.08,,,,,	next use have imperative other
.36,-.26,-.24,-.3,,.14	next use have imperative same
-.18,,,.15,,	next use have present other
.19,-.1,,,,	next use measure imperative same
,,,-.17,.16,	next use measure modal same
.16,,-.12,,,	next use measure owed same
-.11,-.1,,.22,,	next use measure past other
.19,,,,,	next use measure past same
,.18,-.12,-.15,,	next use measure present other
,,-.1,.11,,	next use measure present same
-.08,,,,,	next use move imperative other
.2,,,,,	next use move imperative same
.1,-.1,-.13,,,	next use move modal same
,-.13,,-.09,,.23	next use move owed same
.22,-.1,-.09,,,	next use move past other
,-.13,.17,,,	next use move past same
,.14,-.11,-.15,,	next use move present other
,,,-.19,,	next use move present same
.11,,,,,	next use need modal other
,,.09,,,	next use need modal same
,-.2,.09,,,	next use need owed other
,,,-.1,,	next use need owed same
-.12,,,.1,,	next use need past same
.17,,,,,	next use need present same
-.09,.16,,,,	next use null copula other
.08,,,,,	next use null copula same
,,,-.16,,	next use null imperative other
-.08,.14,,,,	next use null imperative same
.16,,,,,	next use null modal same
.1,,,,,	next use null none same
.31,-.18,,,,	next use null owed same
,,-.09,,,	next use other copula other
.12,-.22,,.1,,	next use other imperative other
,.11,,,,	next use other imperative same
,-.12,-.11,.1,,	next use other modal other
.15,,,,,	next use other modal same
.13,,-.09,,,	next use other owed same
,.24,-.1,,,	next use other past other
,,.08,,,	next use other past same
.46,-.3,,-.15,,	next use other present other
.1,,,-.17,,-.09	next use say imperative other
.21,,,,,	next use say imperative same
.39,-.17,-.21,-.13,,	next use say modal same
-.24,,,.18,,	next use say past other
.17,,,,,	next use say past same
.17,,,-.08,,	next use say present same
.12,,,-.13,,	next use see imperative other
.35,-.16,,-.14,,	next use see imperative same
,-.08,,.09,,	next use see modal same
.28,,,-.14,,	next use see past same
.11,,-.11,,,	next use see present same
.33,-.18,-.1,-.15,,	next use use modal same
,,-.09,.14,,	next use use past other
.09,-.12,,.11,,	next use use past same
.21,-.09,,,,	next use use present other
.12,,,-.17,,	next use work imperative other
.22,,,-.1,,	next use work imperative same
-.14,.25,-.08,,,	next use work modal other
,.09,,,,	next use work modal same
,,-.08,.11,,	next use work owed other
.18,,,,,	next use work owed same
.35,,,-.23,,	next use work past other
.12,-.09,,,,	next use work past same
.15,,,-.11,,	next use work present other
.21,-.09,-.1,,,	next use work present same
.33,-.1,-.17,-.12,,	next verb add same
.1,-.13,,,,	next verb adjust same
,,,-.1,,	next verb anchor same
,,-.16,,,-.13	next verb ask other
.29,-.14,,,,	next verb ask same
,,-.09,,,	next verb be other
.2,,,-.09,,	next verb blow same
-.22,-.17,-.1,.27,,	next verb bolt same
,.18,-.14,-.24,-.09,	next verb break same
.13,-.33,,,,	next verb bring other
-.13,.26,,-.09,,	next verb bring same
-.17,,,.09,,.15	next verb build same
.16,,,,,	next verb burn same
-.11,.24,-.14,-.19,-.13,	next verb buy same
,.17,,-.11,,	next verb call other
.23,,-.09,,,	next verb call same
.19,,,,,	next verb cap same
,-.23,,.24,,	next verb change same
,,,-.1,,	next verb check other
.25,-.08,,-.11,,	next verb check same
.24,-.09,,-.18,,	next verb clamp same
.27,-.09,,-.19,,	next verb clean same
.21,,,-.09,,	next verb clear same
,,,.13,,	next verb close same
,.15,-.11,-.23,,	next verb come other
.23,-.16,-.13,.09,,	next verb come same
,.15,-.14,-.19,,-.11	next verb complete other
.24,-.14,,-.12,,	next verb crack other
.31,,,-.11,,	next verb crack same
.26,,,-.09,,	next verb cut same
-.12,,-.08,.16,,	next verb do other
,.17,-.09,-.08,,	next verb do same
.27,-.09,-.12,-.09,,	next verb draw same
.28,-.16,-.18,-.09,,	next verb drill same
.23,-.17,,,,	next verb drip other
.4,-.22,-.13,-.25,,	next verb drop same
-.15,,,.21,,	next verb dry same
.23,-.15,-.12,-.12,,	next verb feather same
.17,,,,,	next verb feel same
.15,-.11,,,,	next verb figure same
.15,,,,,	next verb file same
,-.09,-.09,.18,,	next verb fill same
.21,,-.1,,,	next verb find same
.17,,-.12,-.16,,-.09	next verb finish other
-.24,.3,-.09,-.17,,	next verb finish same
.31,-.16,,-.21,,	next verb fix same
.19,-.09,,,,	next verb float same
-.11,-.08,,.2,,	next verb flush same
-.18,-.22,-.1,,.21,	next verb forget same
.15,,,,,	next verb frame same
.16,,,,,	next verb fre same
.1,,,,,	next verb fur same
,.23,-.11,-.14,,	next verb get other
.1,-.14,.09,,,	next verb get same
,-.15,.09,,,	next verb give same
,-.14,-.09,.09,,-.11	next verb glue same
-.11,.31,-.1,-.19,,	next verb go other
.17,,,-.12,,	next verb go same
.1,,,,,	next verb gonna same
.24,-.2,,,,	next verb gotta same
.16,,,,,	next verb grab other
,.16,-.11,,,	next verb grab same
.2,,,,,	next verb grind same
.12,,,,,	next verb grout same
.26,-.18,-.09,,,	next verb guess same
,-.17,-.16,.24,,	next verb hang same
.22,-.09,,,,	next verb has same
,-.11,-.1,.15,,	next verb haul same
-.17,,,.14,,	next verb have other
.11,-.1,,,,	next verb have same
.11,,,-.11,,	next verb hit other
.1,,,,,	next verb hit same
-.23,-.14,,.3,,	next verb hold other
.32,-.11,,-.25,,	next verb hold same
,.1,,,,	next verb hook same
.1,,,,,	next verb i'll same
-.17,.24,-.11,-.12,,	next verb keep same
.16,,,-.09,,	next verb kick same
.15,,,,,	next verb knock same
.14,,,,,	next verb know same
.21,,,,,	next verb land same
.32,-.29,-.15,-.15,,	next verb lay same
.27,-.31,,,,	next verb leave other
,-.15,.15,.09,,	next verb leave same
.22,,-.15,,,	next verb let other
.19,,,,,	next verb level same
-.12,,,.17,,	next verb lit same
.14,,-.1,,,	next verb look same
.1,,-.09,-.08,,	next verb lose same
.1,,,,,	next verb make same
,.14,,,,	next verb measure other
,-.09,,.08,,	next verb measure same
.14,,,,,	next verb meter same
.22,-.08,,,,	next verb miss same
,-.15,-.09,.13,,	next verb move same
-.12,,,.16,,	next verb nail same
.09,-.21,,,,	next verb need other
,,.14,-.12,,	next verb need same
.21,,,,,	next verb notch same
.09,,,,,	next verb null same
,-.16,.17,,,	next verb open same
,-.32,.1,,-.12,-.1	next verb order other
-.32,.24,,-.22,.17,	next verb order same
.24,-.09,,-.13,,	next verb pack same
.18,,-.08,,,	next verb pass other
.22,-.14,,,,	next verb patch same
.19,-.12,,,,	next verb pick other
.32,-.25,-.2,.08,,	next verb pick same
.38,,-.27,-.17,,	next verb pin same
.14,,,,,	next verb place same
.16,,,,,	next verb plane same
.11,,,-.09,,	next verb plug same
.18,,-.11,,,	next verb pop same
-.09,.14,,-.15,,	next verb pour same
,-.09,.26,-.14,,	next verb pull other
.15,,,-.08,,	next verb pull same
.22,-.08,,,,	next verb push same
.19,,,-.15,,	next verb put other
.18,-.08,,,,	next verb put same
.24,-.11,,-.08,,	next verb redo same
,.19,,-.17,,	next verb reglue same
.15,-.21,-.13,.14,,	next verb rehang same
-.2,.29,,-.2,,	next verb reorder same
-.25,.21,-.08,.18,,	next verb replace same
.31,-.1,,-.2,,	next verb reroute same
.25,-.14,,-.15,,	next verb reset same
,,.12,-.17,,	next verb rip same
.08,,,,,	next verb roll same
.1,,,,,	next verb run other
.1,,-.17,-.16,.12,	next verb run same
.15,,-.09,-.08,,	next verb sand same
.15,,,-.11,,	next verb say same
,-.16,-.16,.17,-.11,	next verb scrape same
.12,,,,,	next verb screw same
.18,,,,,	next verb scribe same
.29,-.08,-.08,-.11,,	next verb seal other
.25,,,-.11,,	next verb seal same
.18,,,,,	next verb see same
-.18,.23,,-.09,,.11	next verb send same
-.38,-.11,-.13,.26,,.32	next verb set same
.24,-.13,,-.15,,	next verb shave same
.2,,,-.09,,	next verb shim same
,-.08,,,.16,	next verb show same
.37,-.19,-.11,-.27,,	next verb sign same
.36,-.15,-.16,-.11,,	next verb sister same
,-.24,.23,-.2,-.09,	next verb sit other
,,-.11,.15,,	next verb sit same
.17,,,,,	next verb snake same
.13,,,-.08,,	next verb snap same
.23,-.08,,,,	next verb snug same
.2,,,-.1,,	next verb stain same
.09,,,,,	next verb stand same
,,.15,-.15,,	next verb start other
,.13,,,,	next verb stick other
-.32,.23,.2,-.15,,	next verb stick same
-.14,.09,,.12,,	next verb stop same
.09,,,,,	next verb straighten same
.27,-.17,,-.1,,	next verb strip same
,.12,-.13,-.14,,	next verb stuff same
.19,,,,,	next verb supposed same
-.1,-.11,.1,.1,,	next verb swap same
,-.19,-.13,.12,,	next verb swear same
-.19,.29,-.19,-.18,-.12,	next verb take other
-.15,,.28,-.11,,	next verb take same
.12,,,,,	next verb talk same
.21,-.1,,,,	next verb tape same
,-.23,-.08,,.15,	next verb tell other
.17,,,,,	next verb tell same
.13,,,,,	next verb test same
,.12,-.09,-.24,,	next verb throw same
.19,,,,,	next verb tighten same
.21,-.16,,,,	next verb trim same
.2,,,-.09,,	next verb try same
.27,,,-.1,,	next verb turn same
,-.08,-.08,.12,,	next verb use other
.14,-.13,,,,	next verb use same
,.1,-.08,,,	next verb wait same
.11,.19,-.13,-.23,,	next verb walk same
-.23,,.24,-.18,,	next verb want other
.14,,,,,	next verb want same
,,-.15,,,	next verb won't same
,.14,-.12,-.09,,	one after have sentence
,-.2,-.11,.22,,	one after need far
-.17,.2,.12,-.18,,	one after need here
,-.09,,,,-.09	one after need sentence
-.14,.1,.12,,,	one after none far
.41,-.16,,-.24,,	one after none here
.11,.11,,-.12,,	one after none sentence
-.09,,-.16,-.19,.2,	one after used far
-.15,-.32,-.1,.21,-.24,.18	one after used here
.23,-.12,-.09,-.13,,	one after used sentence
-.24,.29,,,,	one buy imperative behind
-.27,-.2,-.14,-.2,.22,.16	one buy past behind
.43,-.18,,-.24,,	one cue back
-.13,-.26,-.12,-.19,.18,.14	one cue bought
,.2,,,,	one cue need
,,,.24,,	one cue used
-.09,,,.14,,	one false
,.22,,-.12,,	one flawed
.33,,-.15,,,	one have present behind
-.22,.16,.18,-.22,-.1,	one kept
,.1,-.15,,,-.09	one left #
.39,-.2,,-.22,,	one left G
-.27,.18,-.1,.19,-.09,	one left and
-.17,.21,-.1,,,	one left bring
-.25,-.09,-.12,-.21,.08,.17	one left buy
.3,-.17,,-.12,,	one left cut
,.14,,-.15,,	one left for
,-.13,,,.09,-.08	one left get
-.22,.26,,,-.09,	one left grab
,-.21,.18,-.08,,	one left has
.26,-.09,-.09,,,	one left have
,,-.12,.08,,	one left in
,-.27,.2,-.21,,-.1	one left is
.44,-.31,-.09,-.24,,	one left it's
.29,-.13,-.16,,,	one left leave
,,,-.09,,	one left me
-.19,.28,,,,	one left need
.26,-.13,,-.15,,	one left of
,,-.09,,,	one left on
,,-.1,-.09,.09,	one left order
-.13,,,.2,,	one left pull
,.12,-.08,,,	one left put
,,,-.12,,	one left run
.29,-.11,,-.2,,	one left that's
.43,-.09,-.2,-.11,,	one left there's
.24,-.26,,-.16,,	one left up
-.29,-.09,,.34,,	one left use
.15,-.09,-.09,-.12,,	one left want
-.17,.19,,,-.1,-.1	one left with
,.18,,-.12,,	one measure past behind
.39,-.22,-.09,-.23,,	one more
,-.1,.14,-.19,-.09,	one move past behind
.17,,,-.09,,	one move present behind
.12,-.19,,,,	one name flawed
-.13,.1,-.1,-.18,,.16	one named before area
,,.13,-.15,.12,	one named before fixture
-.12,.21,-.1,-.13,,	one named before material
-.13,-.1,-.15,.24,,	one named before part
.22,,-.1,-.18,-.09,	one named before surface
-.17,,.18,,-.11,-.11	one named before tool
,-.28,-.18,.15,-.11,-.08	one named before word
.19,,,,,	one named here defect
.15,-.3,.09,-.11,,-.09	one named here fixture
-.22,,.13,.14,,-.08	one named here material
-.33,.23,-.14,.2,,	one named here part
.17,.19,-.1,-.21,-.08,	one named here surface
-.19,.29,-.11,-.21,-.09,-.09	one named here tool
.34,-.12,,-.11,,	one named here word
,,-.12,.12,,	one need modal behind
-.11,.2,,,,	one need owed behind
.31,-.11,-.11,-.13,,	one not ahead
.21,,-.12,,,	one null copula behind
-.12,,-.14,.24,-.11,-.08	one null none no
-.15,.18,-.13,,-.14,-.12	one other copula before
,,.12,,,	one other copula behind
-.22,.09,.21,-.13,-.13,-.1	one other imperative behind
.13,,-.16,-.09,,	one other modal behind
-.19,.17,.16,-.29,,	one other past behind
-.13,-.09,-.23,.1,.17,-.16	one other present behind
,,-.12,.1,,	one right Q
-.13,.25,-.1,-.28,.09,-.12	one right T
-.12,.25,,-.18,,-.08	one right and
-.2,.21,-.14,.09,-.13,-.11	one right are
,.13,,-.15,,	one right at
.38,-.2,,-.18,,	one right before
,.14,-.13,-.14,,	one right by
,,,.16,,	one right for
-.16,,.16,,-.08,	one right in
.31,-.14,-.25,,,	one right leave
.36,-.23,,-.19,-.09,	one right of
,,-.14,.11,,	one right on
,-.13,-.09,.1,,	one right over
-.27,.12,-.11,,.18,	one right the
-.18,-.16,,.23,,	one right up
.28,-.19,,,,	one say imperative behind
.09,,-.11,-.16,-.08,	one say present behind
-.15,.18,-.13,,-.14,-.12	one says copula before
.13,,,,,	one says copula behind
,.14,-.12,-.14,,	one says copula behind not
-.08,.15,.1,-.13,-.08,	one says imperative behind
-.11,,.16,-.1,,	one says imperative behind not
.1,,-.13,,-.09,	one says modal behind
.09,,-.14,-.11,,	one says modal behind not
-.15,,-.15,.27,-.11,-.09	one says none no
,,-.1,-.19,-.08,	one says none no not
,.12,.08,-.11,,	one says owed behind
-.24,.12,-.21,.16,,-.12	one says past before
-.15,,-.08,.18,,	one says past behind not
-.24,.16,,-.1,.21,	one says present before
.24,-.09,-.13,-.08,,	one says present behind
.23,-.11,-.1,,,	one says present behind not
-.34,.22,,.14,,	one sized
,.25,,-.15,,	one true
,-.09,,.16,,	one use past behind
.23,-.14,,,,	one verb ask behind
-.15,.18,-.13,,-.14,-.12	one verb be before
,,.12,,,	one verb be behind
-.19,.23,-.1,,,	one verb bring behind
-.22,-.1,-.13,-.2,.13,.15	one verb buy behind
.33,-.17,,-.18,,	one verb cut behind
.33,-.18,,-.25,,	one verb find behind
,,.1,-.16,-.13,-.08	one verb get behind
,.13,-.1,-.09,,	one verb give behind
.12,-.26,-.19,-.29,.16,-.09	one verb go behind
-.23,.28,,,-.08,	one verb grab behind
.27,,-.09,,,	one verb have behind
.29,-.12,-.13,,,	one verb leave behind
-.15,.24,,,,	one verb need behind
.21,,-.12,,,	one verb null behind
-.12,,-.14,.24,-.11,-.08	one verb null no
.12,-.17,-.11,-.1,.11,	one verb order behind
,-.08,,,,	one verb pull behind
,,,.09,,	one verb put behind
.18,,-.09,-.25,,	one verb run behind
-.12,.16,-.18,-.19,-.14,.1	one verb send behind
,-.09,,.16,,	one verb use behind
,-.1,-.1,.11,-.1,-.09	one verb want behind
,-.09,-.16,.08,-.14,-.09	one whole clause
,.13,-.15,-.23,,	one work imperative behind
.18,,,-.12,,	one work modal behind
.36,-.24,-.11,-.1,,	one work owed behind
-.37,.2,-.15,.26,-.18,-.13	one work past before
.08,-.17,-.11,.16,,	one work past behind
,.11,,-.18,,	one work present behind
,.08,,,,	opens -
.13,-.15,-.11,,,	opens alright
,.12,-.12,,,	opens also
.24,,-.11,-.1,,	opens because
.18,,,,,	opens boss
.11,,,-.09,,	opens but
.25,-.09,,,,	opens cause
-.2,-.24,-.24,.35,-.09,-.1	opens clause area
.15,,,,,	opens clause bare
-.13,.1,,.12,,	opens clause count
-.16,.12,-.19,.2,,	opens clause length
,.1,-.15,,,-.09	opens clause one
-.2,,,,,	opens clause pack
-.1,,.08,,-.1,-.09	opens clause volume
-.17,.1,-.15,.11,,	opens clause weight
-.11,.1,,,,	opens like
.25,,,-.08,,	opens now
.33,-.22,-.11,-.13,,	opens oh
.26,-.15,-.09,-.2,,	opens ok
.21,,,,,	opens okay
.12,,,,-.09,	opens please
-.21,.3,-.16,-.13,,	opens plus
,.11,,,,	opens so
,.12,,-.08,,	opens then
,,,.15,,	opens yeah
-.23,,.2,-.12,-.16,	pack after bought far
-.21,.34,,-.26,-.09,	pack after have far
.23,-.25,,-.25,-.1,	pack after have here
-.11,.13,,-.16,,	pack after have sentence
-.18,.11,.14,-.14,-.12,	pack after need far
-.22,.3,,-.1,,	pack after need here
,.18,,-.34,,	pack after need sentence
-.21,.09,,,,	pack after none far
-.2,.27,-.31,,,	pack after none here
-.1,.1,,,,	pack after none sentence
,,-.09,,.1,	pack after returned far
-.16,,.16,-.09,,	pack after used far
-.15,-.23,.1,.17,,	pack after used here
-.24,,,.21,-.09,	pack after used sentence
.36,-.11,-.23,-.17,,	pack bag
.16,.13,-.24,-.22,-.09,	pack box
-.19,.37,,,-.1,	pack buy imperative behind
.4,-.26,-.19,-.29,-.1,-.09	pack can
-.19,.16,,,,	pack cue back
-.34,-.26,-.31,-.11,.42,-.17	pack cue bought
,-.24,.36,-.1,-.09,	pack cue have
-.1,.36,,-.13,,	pack cue need
-.09,,-.08,.24,,	pack cue used
,.08,-.18,-.09,,	pack have present before
-.17,-.1,.25,-.11,,	pack have present behind
,-.31,.21,-.15,-.08,	pack kept
-.2,,,,,	pack left #
-.08,.23,,-.09,,	pack left +
-.25,-.1,-.17,.3,-.09,-.08	pack left G
-.3,.3,,-.35,-.09,	pack left Q
-.12,.08,,,-.11,-.1	pack left about
,.21,-.09,,,	pack left and
-.18,.26,,-.09,,	pack left bring
-.26,.13,-.12,-.16,.12,-.13	pack left buy
-.35,,.39,-.3,-.15,	pack left get
-.25,.1,-.13,-.14,.15,-.08	pack left grab
-.17,-.1,.25,-.11,,	pack left have
.17,,-.3,-.1,-.09,	pack left in
,,-.12,.12,,	pack left me
,,,-.1,,	pack left need
.22,-.22,-.11,,,	pack left of
,-.17,-.26,.19,-.13,-.17	pack left take
-.29,-.23,.34,-.26,,	pack left there's
-.15,-.12,-.1,.31,,	pack left through
-.25,.12,-.2,-.14,.18,	pack left up
,-.09,,.17,,	pack left use
-.29,.43,-.14,-.15,,	pack more
-.19,-.22,.25,,,	pack move past before
,-.12,,.19,,	pack move past behind
,.12,,,-.09,	pack name flawed
-.11,-.25,-.21,.27,-.12,-.08	pack named before area
-.19,.09,.13,,-.12,	pack named before fixture
,.12,,,,	pack named before material
.33,,,-.21,,	pack named before part
.27,-.13,-.11,-.15,,-.11	pack named before surface
.09,,,,-.12,-.08	pack named before word
-.23,,,.13,,	pack named here material
.22,,-.21,-.21,,	pack named here part
-.09,.23,-.21,-.1,-.1,	pack named here surface
-.32,,.24,,.11,-.09	pack named here word
.13,-.19,.14,-.12,,	pack need modal behind
,.23,,,,	pack need owed behind
-.33,.27,-.14,.11,-.09,	pack not ahead
-.24,.09,.2,,-.13,-.09	pack null copula behind
-.26,.16,,,,-.08	pack null none no
.09,,-.09,,,	pack other copula before
,.09,-.19,.09,-.09,	pack other copula behind
,.1,-.18,-.11,,	pack other imperative behind
-.25,.32,-.16,-.17,,	pack other modal behind
-.08,-.31,.17,,.2,-.09	pack other past behind
.26,-.13,-.16,-.23,,	pack pointing
-.19,.15,,.1,,	pack right #
-.38,.14,-.29,.28,-.1,-.08	pack right Q
-.2,,.18,-.1,,	pack right T
-.21,.17,-.09,.09,,	pack right and
,-.16,-.11,,,-.08	pack right be
.11,,-.2,-.16,-.09,	pack right by
,,-.11,-.1,.1,	pack right for
-.27,-.31,-.43,.45,-.15,-.09	pack right go
,-.17,.19,-.15,,	pack right in
,,-.16,.09,-.09,-.11	pack right is
,-.11,.3,-.2,,	pack right leave
.19,-.28,.2,-.24,-.13,-.09	pack right no
.28,-.18,-.14,-.2,,	pack right of
,-.08,.21,-.15,,	pack right on
-.35,.14,,.1,-.09,	pack right the
-.21,.26,,-.3,-.08,	pack right to
,,-.19,.08,-.1,	pack says copula before
-.23,.11,.16,,-.12,-.08	pack says copula behind
-.16,.35,-.14,-.11,,	pack says imperative behind
.13,,-.13,-.11,-.1,	pack says imperative behind not
-.17,,.16,-.26,-.16,-.15	pack says modal before
,.13,-.19,-.16,-.09,	pack says modal behind
-.19,.09,,,,-.08	pack says none no
-.12,.32,,,,	pack says owed behind
-.25,,.24,,-.08,	pack says past before
,-.22,,.2,,	pack says past behind
-.26,,-.13,.29,,	pack says past behind not
-.12,.25,-.23,-.14,-.1,	pack says present before
-.11,-.1,.21,,-.1,	pack says present behind
-.21,.08,,,.08,	pack sized
-.26,.1,.16,,-.11,	pack sold so false
-.22,,,.12,,	pack sold so true
.44,-.17,-.12,-.28,,	pack tub
,-.1,-.09,.16,,	pack use past behind
-.15,-.15,-.1,.32,,	pack use present behind
.09,,-.09,,,	pack verb be before
,.09,-.19,.09,-.09,	pack verb be behind
-.1,.21,,,,	pack verb bring behind
,,.18,-.21,-.11,	pack verb get behind
-.23,,-.08,.2,,	pack verb go behind
-.25,.2,-.09,-.12,.12,	pack verb grab behind
,.08,-.18,-.09,,	pack verb have before
-.17,-.1,.25,-.11,,	pack verb have behind
-.14,-.16,.19,,,	pack verb leave before
,,,-.08,,	pack verb need behind
-.24,.1,.2,,-.12,-.08	pack verb null behind
-.26,.16,,,,-.08	pack verb null no
-.24,,-.1,-.25,.28,	pack verb pick behind
,.21,-.09,-.18,,	pack verb put behind
-.13,,,.15,-.14,-.16	pack verb take behind
,-.09,-.09,.2,,	pack verb use behind
-.22,.29,-.09,-.14,,	pack verb want behind
-.29,,,,.09,-.09	pack whole clause
-.15,.3,,-.16,,	pack work imperative behind
,-.1,-.18,.33,-.1,	pack work past behind
.11,,,,,	plural bare
-.11,,,,,	plural count
.3,-.18,-.15,-.1,,	plural length
,,.09,,,	plural one
-.09,.1,,,,	plural pack
,-.19,-.09,,,.1	plural pointer
-.33,-.11,.2,.11,,	plural volume
-.12,.22,,,,	plural weight
.23,,,-.15,,	pointer after none sentence
.22,-.1,-.12,,,	pointer cue have
,-.09,-.14,,,-.1	pointer cue used
-.1,-.14,-.09,.08,,.15	pointer name flawed
-.15,-.12,-.08,.24,,	pointer named before material
.41,-.19,-.14,-.32,,-.12	pointer named before part
,-.18,-.1,.13,,-.12	pointer right #
-.11,-.1,-.15,.11,,.11	pointer says past behind
-.27,,,.26,,	pointing
-.23,.29,,,,	right &
-.12,.21,-.14,-.15,-.09,	right (
,-.08,-.09,,,	right +
,,-.1,.12,-.1,	right + Q
-.11,,-.08,.13,,-.08	right /
,.14,-.08,-.28,-.08,-.08	right / G
,.19,-.17,-.24,-.09,-.09	right @
.12,,,,,	right Q
.36,-.12,,-.11,,	right Q #
.28,-.17,-.08,-.16,,	right Q Q
.12,,,,,	right Q at
-.18,.19,-.12,,,	right Q of
.1,,,,,	right Q short
.17,,,,,	right T
.12,,,,,	right T #
.26,-.16,,-.15,,	right T and
.18,-.1,,,,	right T before
.19,,,-.09,,	right a
.14,,,,,	right about
.12,,,,,	right about Q
.21,,,,,	right above
.26,-.1,-.1,-.09,,	right across
,-.11,.13,,,	right after
.13,,,,,	right again
.1,,,,,	right again #
,-.09,,,,	right all
.11,-.22,.1,-.26,,	right already
,.11,,,,	right and
.11,-.17,-.14,,,	right and #
.22,,,-.19,,	right and G
-.16,,,.15,,	right and a
.09,.09,-.08,-.14,,	right and that
,,-.11,,,	right and the
.16,,,,,	right another
.23,-.08,,-.09,,	right are Q
.16,,,,,	right are all
.2,,,-.12,,	right are cut
.24,,,,,	right are in
-.1,-.19,-.11,.22,,	right are on
,,,.11,,	right around
.09,,,,,	right around the
.12,,,-.08,,	right at
.08,,,,,	right at N
.13,,,,,	right at Q
.14,,,,,	right at the
.15,,,,,	right be
.12,,,,,	right be Q
,,,-.09,,	right before
.28,-.14,,,,	right before T
,.2,,-.15,,	right before i
,-.25,.18,-.14,,	right before the
.16,,,,,	right behind
.15,,,,,	right behind the
.23,,,-.19,,	right below
.26,-.11,,-.19,,	right bend
.27,-.13,,-.21,,	right bend #
.16,,,,,	right blow
.15,,,-.09,,	right both
.29,-.14,-.11,-.11,,	right break
.18,,,-.09,,	right break #
.12,,,-.08,,	right by
.21,,,-.12,,	right by Q
,.2,-.08,,,	right by T
-.12,.18,-.14,-.11,,	right can
.12,,,,,	right can't
.14,,,,,	right can't go
.19,,,,,	right clean
.11,-.08,,-.1,,.15	right come
-.08,,,,,.17	right come in
.11,,,,,	right come out
.15,,,,,	right come up
-.16,.11,-.15,,,.08	right crack
,.15,-.13,,-.11,-.16	right crack #
-.08,-.14,-.09,.16,,	right cut
-.11,-.15,-.11,.17,,	right cut #
-.09,.12,,-.14,-.08,	right do
,-.28,.16,-.18,-.1,-.09	right do #
,-.13,-.08,.12,,	right don't
,-.1,,.09,,	right down
.31,,-.09,-.13,,	right down #
.15,,,,,	right drip
.13,,,,,	right drip #
.16,,,,,	right dry
.16,,,,,	right dry #
,-.31,-.17,.23,-.1,-.11	right each
.16,,,,,	right eat
.19,,,,,	right fine
,.09,,,,	right for
,.11,,,,	right for G
.16,,-.09,-.19,,	right for T
.09,,,-.09,,	right for it
-.14,.09,.15,,,	right for that
,.15,,-.1,,	right for the
.17,,,-.14,,	right from
.19,-.09,,-.18,,	right from the
.19,-.09,,-.08,,	right get
.09,,,,,	right get a
-.14,-.1,,.2,,	right glue
,-.08,,.12,,	right glue #
,,-.16,.19,,	right go
.17,,,,,	right go back
.19,,,-.09,,	right go down
-.09,.18,,,,	right go in
,-.09,,.12,,	right go on
,,,.11,,	right go up
.12,,,,,	right gotta
.1,,,,,	right hang
.15,,,,,	right has
.14,,,,,	right has a
.11,,,,,	right has to
.14,,,,,	right have
,.12,-.12,,,	right have Q
.09,,,,,	right have a
-.12,-.22,.3,-.13,-.09,	right here
-.1,-.19,.24,-.13,,	right here #
.19,,,,,	right hold
.11,,,,,	right hum
.11,,,,,	right hum #
.21,,,,,	right i
.13,-.13,.12,-.11,,	right if
.08,-.09,,,,	right in
-.28,-.11,-.2,.45,,	right in #
.32,-.19,,-.21,,	right in Q
,,,-.16,,	right in T
,-.14,-.14,.13,,	right in it
,,.08,-.12,,	right in the
.29,-.17,-.11,-.16,,	right in there
.1,,,,,	right is
.15,,,,,	right is Q
.17,,,,,	right is all
.27,-.16,,-.15,,	right is do
.19,,,,,	right is fine
.14,,,,,	right is finish
-.11,-.17,-.11,.19,,	right is go
-.1,.15,-.12,,,	right is gonna
,,.12,-.11,,	right is in
-.13,,-.14,.17,,	right is loose
,.1,,-.08,,	right is miss
-.12,,,.19,,	right is on
.12,,,,,	right is only
.13,,,,,	right is out
,-.1,,.16,,	right is up
.16,,,,,	right it
.12,-.08,,,,	right it #
.15,,,,,	right it T
.15,,,,,	right it's
.14,,,,,	right just
,-.08,,-.09,.18,	right land
.14,,,,,	right leak
,,.31,-.2,,	right leave
-.1,,.27,-.19,,	right leave #
,-.14,.22,-.21,,	right leave over
.13,,,,,	right lift
.17,,,,,	right like
.11,,,,,	right measure
.11,,,,,	right measure Q
.21,,,-.08,,	right miss
,,,-.09,,	right miss #
,.13,,-.1,,	right more
-.26,.29,,,,	right more #
,-.08,,.13,,	right mount
.16,,,,,	right need
-.09,.18,-.1,-.15,,	right need #
.12,,,,,	right need Q
.26,-.13,,-.15,,	right no
.12,-.2,.17,-.2,,	right no #
,.2,,-.1,,	right not
.18,,,,,	right now
.33,-.09,,-.13,,	right now #
.17,,-.08,,,	right of
.09,,,-.19,,	right of Q
.1,-.37,-.08,,-.08,	right of it
.15,-.14,,,,	right of that
.2,,,-.08,,	right of the
-.11,,-.19,.1,.09,	right of them
.14,-.08,-.08,,,	right off
.35,-.1,,-.19,,	right off #
,-.09,-.15,.18,,	right off the
.09,,,,,	right on
-.23,,-.12,.28,,	right on #
-.29,,.19,,,	right on G
.25,,-.18,-.08,,	right on Q
-.15,.27,,-.09,,	right on T
.18,,-.08,,,	right on in
,-.24,,,,	right on it
,-.24,.24,-.29,-.13,-.11	right on site
.23,-.09,,,,	right on that
.17,-.12,,,,	right on the
.15,,,,,	right only
.13,,,,,	right only Q
.12,,,,,	right open
.24,,-.1,,,	right out
.31,-.14,-.09,-.18,,	right out #
,-.24,,.09,,	right out of
,-.1,,,,	right over
.16,,,-.1,,	right over Q
.16,,,,,	right over it
-.17,,,.18,,.1	right over the
.12,,,,,	right place
.16,,,,,	right pull
.15,,,,,	right pull #
.18,,,,,	right read
.18,,,,,	right read Q
.2,,,,,	right right
-.33,.23,,.21,,	right rot
,-.12,.09,-.21,.16,	right run
.12,,,,,	right sag
.15,,,,,	right say
.24,-.09,,,,	right say Q
,,,-.11,,.18	right scratch
.14,,,,,	right set
.13,,,,,	right set #
,.18,-.17,-.2,,	right short
,.22,-.21,-.21,,	right short #
,,,,,.12	right show
-.09,,,,,.17	right show up
-.14,-.16,.23,-.09,,	right sit
.19,,,,,	right sit Q
,,-.09,.14,,	right so
.22,-.1,,,,	right start
-.08,.15,,,,	right stay
.11,,,,,	right stick
-.18,-.11,.31,-.11,,	right still
,,.13,-.25,,	right strip
-.12,,.16,-.22,,	right strip #
,-.12,,.13,,	right swap
.15,,,,,	right tear
.15,,,,,	right tear #
.16,,,,,	right test
,-.14,,.11,,	right that
-.32,.18,-.13,-.15,.19,	right the Q
,.12,,,,	right there
.12,,,,,	right those
.25,-.09,,-.12,,	right through
.19,-.08,,,,	right til
.09,,,,,	right to
.31,-.14,-.1,-.17,,	right to Q
-.09,.19,,-.17,,	right to be
.32,,-.22,-.26,,	right to go
,-.13,,,,	right to the
.25,,,-.13,,	right too
.27,,,-.15,,	right too #
.18,,,,,	right top
.15,,,,,	right trip
-.14,-.15,.21,-.13,-.08,	right turn
.16,,,-.13,,	right under
,.08,,-.11,,	right under it
.19,,,-.12,,	right under the
.19,,,,,	right until
.11,,,,,	right up
,-.09,,,,	right up #
.09,,,,,	right up T
.23,,,-.11,,	right up to
,-.13,-.12,.15,,	right use
-.16,-.14,-.13,.23,,	right use #
,.11,,,,	right want
.12,,,,,	right want Q
.14,,,,,	right weep
,,-.1,-.23,,.2	right were
.15,,,-.12,,	right when
.12,,,,,	right where
.11,,,,,	right which
.17,-.08,,,,	right will
.16,,-.12,,,	right with
.1,-.08,-.17,,,	right with G
,-.11,-.1,.19,,	right with Q
-.21,.23,-.17,,,	right with me
.26,-.13,,-.09,,	right with the
.25,-.14,-.11,-.11,,	right without
.22,,,,,	right won't
.24,-.09,-.08,-.08,,	right you
-.23,.29,,,,	right1 &
-.12,.21,-.14,-.15,-.09,	right1 (
,-.08,-.09,,,	right1 +
-.11,,-.08,.13,,-.08	right1 /
,.19,-.17,-.24,-.09,-.09	right1 @
.12,,,,,	right1 Q
.12,,,,,	right1 Q.
.17,,,,,	right1 T
.17,,,,,	right1 T.
.19,,,-.09,,	right1 a
.14,,,,,	right1 about
.21,,,,,	right1 above
.26,-.1,-.1,-.09,,	right1 across
,-.11,.13,,,	right1 after
.13,,,,,	right1 again
,-.09,,,,	right1 all
.11,-.22,.1,-.26,,	right1 already
,.11,,,,	right1 and
.16,,,,,	right1 another
,,,.11,,	right1 around
.12,,,-.08,,	right1 at
.15,,,,,	right1 be
,,,-.09,,	right1 before
.16,,,,,	right1 behind
.23,,,-.19,,	right1 below
.26,-.11,,-.19,,	right1 bend
.16,,,,,	right1 blow
.15,,,-.09,,	right1 both
.29,-.14,-.11,-.11,,	right1 break
.12,,,-.08,,	right1 by
-.12,.18,-.14,-.11,,	right1 can
.12,,,,,	right1 can't
.19,,,,,	right1 clean
.11,-.08,,-.1,,.15	right1 come
-.16,.11,-.15,,,.08	right1 crack
-.08,-.14,-.09,.16,,	right1 cut
-.09,.12,,-.14,-.08,	right1 do
,-.13,-.08,.12,,	right1 don't
,-.1,,.09,,	right1 down
.15,,,,,	right1 drip
.16,,,,,	right1 dry
,-.31,-.17,.23,-.1,-.11	right1 each
.16,,,,,	right1 eat
.19,,,,,	right1 fine
,.09,,,,	right1 for
.17,,,-.14,,	right1 from
.19,-.09,,-.08,,	right1 get
-.14,-.1,,.2,,	right1 glue
,,-.16,.19,,	right1 go
.12,,,,,	right1 gotta
.1,,,,,	right1 hang
.15,,,,,	right1 has
.14,,,,,	right1 have
-.12,-.22,.3,-.13,-.09,	right1 here
.19,,,,,	right1 hold
.11,,,,,	right1 hum
.21,,,,,	right1 i
.13,-.13,.12,-.11,,	right1 if
.08,-.09,,,,	right1 in
.1,,,,,	right1 is
.16,,,,,	right1 it
.15,,,,,	right1 it's
.14,,,,,	right1 just
,-.08,,-.09,.18,	right1 land
.14,,,,,	right1 leak
,,.31,-.2,,	right1 leave
.13,,,,,	right1 lift
.17,,,,,	right1 like
-.16,.25,-.1,,,	right1 mark.
.11,,,,,	right1 measure
.21,,,-.08,,	right1 miss
,.13,,-.1,,	right1 more
,-.08,,.13,,	right1 mount
.16,,,,,	right1 need
.26,-.13,,-.15,,	right1 no
,.2,,-.1,,	right1 not
.18,,,,,	right1 now
.17,,-.08,,,	right1 of
.14,-.08,-.08,,,	right1 off
.09,,,,,	right1 on
.15,,,,,	right1 only
.12,,,,,	right1 open
.24,,-.1,,,	right1 out
,-.1,,,,	right1 over
.12,,,,,	right1 place
.16,,,,,	right1 pull
.18,,,,,	right1 read
.2,,,,,	right1 right
-.33,.23,,.21,,	right1 rot
,-.12,.09,-.21,.16,	right1 run
.12,,,,,	right1 sag
.15,,,,,	right1 say
,,,-.11,,.18	right1 scratch
.14,,,,,	right1 set
,.18,-.17,-.2,,	right1 short
,,,,,.12	right1 show
-.14,-.16,.23,-.09,,	right1 sit
,,-.09,.14,,	right1 so
.22,-.1,,,,	right1 start
-.08,.15,,,,	right1 stay
.11,,,,,	right1 stick
-.18,-.11,.31,-.11,,	right1 still
,,.13,-.25,,	right1 strip
,-.12,,.13,,	right1 swap
.21,,,,,	right1 t defect.
.09,,,,,	right1 t finish.
.15,,,,,	right1 tear
.16,,,,,	right1 test
,-.14,,.11,,	right1 that
,.12,,,,	right1 there
.12,,,,,	right1 those
.25,-.09,,-.12,,	right1 through
.19,-.08,,,,	right1 til
.09,,,,,	right1 to
.25,,,-.13,,	right1 too
.18,,,,,	right1 top
.15,,,,,	right1 trip
-.14,-.15,.21,-.13,-.08,	right1 turn
.16,,,-.13,,	right1 under
.19,,,,,	right1 until
.11,,,,,	right1 up
,-.13,-.12,.15,,	right1 use
,-.2,-.15,,.11,-.13	right1 v buy.
.14,,,,,	right1 v have.
,-.08,,,,.09	right1 v measure.
,,.17,,,	right1 v move.
.12,,,,,	right1 v need.
.14,,,,,	right1 v other.
.09,,,,,	right1 v say.
.28,-.08,,-.08,,	right1 v see.
,-.13,-.12,.15,,	right1 v use.
.1,,,,,	right1 v work.
.1,,,,,	right1 w.
,.11,,,,	right1 want
.14,,,,,	right1 weep
,,-.1,-.23,,.2	right1 were
.15,,,-.12,,	right1 when
.12,,,,,	right1 where
.11,,,,,	right1 which
.17,-.08,,,,	right1 will
.16,,-.12,,,	right1 with
.25,-.14,-.11,-.11,,	right1 without
.22,,,,,	right1 won't
.24,-.09,-.08,-.08,,	right1 you
.1,-.16,-.08,.1,,	right2 @
,.1,,,,	right2 G
.26,,,-.16,,	right2 N
.26,,,-.16,,	right2 N.
.13,,,,,	right2 Q
.13,,,,,	right2 Q.
.14,,,,,	right2 T
.14,,,,,	right2 T.
.25,-.11,,-.15,,	right2 about
.23,,,,,	right2 again
.19,,,-.15,,	right2 all
,,,.12,,	right2 an
.09,.08,-.18,,,	right2 and
.31,,-.12,-.12,,	right2 around
.09,,,,,	right2 at
.24,,,,,	right2 back
.11,,,-.12,,	right2 be
.22,-.13,,,,	right2 before
.15,,,,,	right2 behind
,,,-.11,,.17	right2 bend
.21,,-.1,-.18,,	right2 by
-.12,.18,-.14,-.08,,	right2 ceiling
.18,,,,,	right2 come
-.11,,,,,.19	right2 crack
.2,,,-.08,,	right2 cut
.19,-.09,,,,	right2 dead
,.17,-.09,-.13,,	right2 do
.26,,,-.11,,	right2 down
,.14,-.21,-.34,-.09,-.09	right2 each
,.14,,,,	right2 fine
.14,,,,,	right2 finish
,.26,-.29,-.17,-.11,	right2 for
.23,-.12,,-.22,,	right2 from
-.12,-.26,-.12,.22,,-.09	right2 front
-.14,-.1,.21,,,	right2 get
,-.11,,,,	right2 go
,.14,-.11,,,	right2 gonna
,,.19,-.15,,	right2 good
,-.22,-.11,.2,,	right2 hang
.24,,-.11,,,	right2 has
.16,-.08,,,,	right2 have
.22,,,,,	right2 hinge
,,,-.17,,	right2 i
,-.09,-.08,.13,,	right2 if
.08,,.1,-.15,,	right2 in
.23,-.21,-.12,.09,,	right2 into
.21,,,,,	right2 is
,,,.13,,	right2 it
,.15,-.11,-.14,,	right2 kitchen
.26,-.11,,-.14,,	right2 leak
-.16,-.15,.19,.08,,-.14	right2 loose
.2,,,,,	right2 mark.
-.12,.14,-.17,-.19,.15,	right2 me
,,.28,-.32,-.17,-.08	right2 my
.33,-.11,,-.23,,	right2 new
.15,,,,,	right2 no
.14,,,,,	right2 not
-.14,-.08,,.24,,	right2 now
-.22,.14,-.1,,,.11	right2 of
.2,,,,,	right2 off
.29,-.09,,-.17,,	right2 old
,,,.1,,	right2 on
.14,,,,,	right2 only
,,,.14,,	right2 out
,-.13,.19,-.18,,	right2 over
-.17,,,,.23,	right2 pack
.23,-.1,,,,	right2 pipe
.13,,,,,	right2 pull
-.22,.15,-.15,.16,,	right2 put
.22,-.09,,,,	right2 read
.23,-.11,,,,	right2 right
.21,,,,,	right2 run
.29,-.14,,-.23,,	right2 set
.12,,,,,	right2 short
-.16,-.12,-.1,.19,,	right2 side
,-.09,.15,-.12,,	right2 sit
,-.24,.24,-.29,-.13,-.11	right2 site
.19,,-.14,,,	right2 so
,-.2,-.18,.19,,	right2 still
.21,,-.08,,,	right2 t area.
,.15,-.08,-.13,,	right2 t finish.
.18,-.12,,,,	right2 t fixture.
,.17,,-.11,,	right2 t material.
,,-.09,,,	right2 t part.
.24,,,,,	right2 t role.
.25,,,-.14,,	right2 t surface.
.11,,,,,	right2 tear
.13,,,-.1,,	right2 that
.12,,,,,	right2 the
-.1,,-.18,.1,.09,	right2 them
.19,-.13,,,,	right2 then
.1,-.16,-.11,,,	right2 there
.26,-.1,,-.16,,	right2 through
.15,,,,,	right2 till
.17,,,-.11,,	right2 to
-.21,.19,-.13,-.2,.2,	right2 v buy.
.16,-.08,,,,	right2 v have.
.09,,,,,	right2 v measure.
,-.1,,,,	right2 v move.
-.16,.15,-.15,.09,,	right2 v need.
-.19,,-.09,.2,,	right2 v say.
.1,,,,,	right2 v work.
.1,,,,,	right2 w.
,,-.12,-.1,,	right2 wait
-.14,.19,,-.11,,	right2 wall
.15,,,,,	right2 water
.16,,,,,	right2 weep
.17,,,,,	right2 wet
-.11,,-.08,.21,,	right2 when
,-.1,-.09,.21,,-.1	right2 with
.24,,,-.09,,	right2 you
.09,,,,,	right3 #
,.1,-.12,-.17,.09,	right3 N
.14,,,,,	right3 Q
.21,,,-.09,,	right3 T
.11,-.1,-.09,,,	right3 a
.27,,-.1,-.12,,	right3 about
.19,,,,,	right3 all
,.18,,-.08,,	right3 and
,-.13,,,,	right3 are
.14,,,,,	right3 at
-.25,-.14,.21,,,.13	right3 back
-.17,-.09,.23,,,	right3 basement
.18,,,,,	right3 bath
,.08,,,,	right3 be
-.14,.2,,,,	right3 before
,.12,-.13,-.13,,	right3 behind
.14,,,,,	right3 big
.24,,,-.15,,	right3 bottom
.21,-.08,,,,	right3 box
,-.09,,.08,,	right3 by
.17,,,,,	right3 can
.31,-.14,-.22,-.21,,	right3 ceiling
.15,-.2,,-.13,,	right3 closet
-.28,,.19,.19,,	right3 come
.22,-.1,,,,	right3 corner
.08,,,,,	right3 crack
.23,,,-.1,,	right3 cut
.26,-.08,,-.11,,	right3 deep
.25,-.12,-.13,-.17,,	right3 den
,.18,-.09,-.15,,	right3 dining room
.12,-.11,.09,-.11,,	right3 do
.15,,,,,	right3 down
,.09,-.14,,,	right3 em
.19,,,,,	right3 every
.16,,,-.1,,	right3 except
.23,,,-.09,,	right3 floor
.09,.08,.1,-.26,,	right3 for
.23,-.11,,-.09,,	right3 from
.1,,,,,	right3 garage
.26,-.12,,-.08,,	right3 get
.16,,,,,	right3 go
.19,,,,,	right3 hall
.23,,-.16,-.16,,	right3 hallway
.21,,,-.15,,	right3 hang
.15,,,,,	right3 has
.24,-.08,,-.14,,	right3 house
,.11,-.12,-.13,,	right3 i
-.11,.16,,-.14,,	right3 if
.16,-.12,.1,-.17,,	right3 in
,.13,,,,	right3 is
.08,.16,-.11,-.16,,	right3 it
.26,-.08,,-.1,,	right3 kitchen
-.13,.13,-.09,.08,,	right3 land
,,,-.15,,	right3 leave
-.12,.16,-.08,,,	right3 long
-.13,,.2,,,	right3 my
.2,-.12,,,,	right3 need
,-.19,,.15,,	right3 no
.21,-.09,,,,	right3 not
.1,,,,,	right3 nothing
-.13,-.14,-.12,.19,-.08,	right3 now
.26,-.09,,-.08,,	right3 off
.16,,,,,	right3 old
,,-.1,,,	right3 on
.24,,,,,	right3 out
.18,-.08,,,,	right3 outside
.3,,,-.26,,	right3 over
.19,,,,,	right3 right
.12,,,,,	right3 screw
-.36,.15,.12,,,.2	right3 shop
.2,-.09,,,,	right3 short
.2,,,,,	right3 side
.15,,,,,	right3 so
.22,-.13,,,,	right3 split
.15,,,,,	right3 stairs
.29,-.17,-.2,-.09,,	right3 still
.15,,,,,	right3 than
,.16,,-.09,,	right3 that
,,,-.08,,	right3 the
-.08,-.08,,.18,,	right3 till
.09,-.08,,,,	right3 to
.2,,,,,	right3 too
-.16,.2,,,,	right3 top
-.13,-.29,.26,,-.1,-.09	right3 truck
.14,,,,,	right3 under
.2,,,,,	right3 up
.29,,,-.17,,	right3 wall
,,-.15,-.13,.08,	right3 way
.23,-.11,-.11,-.16,,	right3 when
.23,-.14,,-.12,,	right3 where
,,-.1,-.08,,.13	right3 with
.23,-.09,,,,	right3 x
,,-.11,.12,,	right3 you
.11,,,,,	says copula before
.12,,,,,	says copula before not
.09,,,,,	says copula behind
.18,,,,,	says imperative before
,.13,,,,	says imperative behind
.11,,,-.08,,	says imperative behind not
.24,,,-.08,,	says modal before not
,.13,-.08,,,	says modal behind
,-.15,.12,,,	says modal behind not
.1,,,,,	says none no
.08,.1,,,,	says none no not
.18,,,,,	says owed before
,.14,,,,	says owed behind
.19,-.27,-.1,,.15,	says owed behind not
.12,,,,,	says past before
,.18,-.14,-.1,,	says past before not
.08,-.11,,,,	says past behind
,.14,-.12,,,	says past behind not
.13,,,,,	says present before
.14,,,,,	says present before not
.1,,,,,	says present behind
,,,.1,,	says present behind not
-.17,.12,,,,	sized
-.13,.09,,.08,,	sold so false
-.24,.13,,.14,,	sold so true
,,-.22,.2,-.08,-.08	sort area
.16,,,,,	sort bare
,.09,,,,	sort one
-.14,.09,,,,	sort pack
.09,-.18,-.11,,,	sort pointer
-.3,.16,,.11,,	sort volume
,.08,-.08,,,	sort weight
-.27,-.15,.11,.15,,	unit L
-.16,,,.18,-.09,	unit bag
.13,,,-.25,-.11,	unit bottle
-.13,,,,.09,	unit box
.09,.19,,-.19,-.08,	unit bucket
,,,-.11,.09,	unit bundle
-.33,-.1,,.3,-.14,	unit can
.5,-.25,-.24,-.35,,	unit coat
-.27,.2,,.15,,	unit each
-.22,.11,,.13,,	unit from said
-.1,,-.09,.12,,	unit from shared
,,-.09,.1,,	unit ft
-.28,.13,.17,,,	unit gal
,.14,,-.17,,	unit lb
-.35,-.24,.15,-.37,.23,	unit length
,-.1,.17,,,	unit m
-.2,.4,-.17,-.15,,	unit pack
-.26,,-.24,.24,-.17,-.1	unit pail
-.42,.2,-.13,.13,-.09,.13	unit pair
-.27,.21,-.14,.08,,	unit qt
-.33,.12,,.21,,	unit roll
,-.13,,.12,,	unit row
-.39,,,.33,-.11,	unit sheet
.18,,-.22,-.13,-.09,-.08	unit sq ft
-.42,.21,-.19,.2,,	unit stick
-.4,.14,.11,,-.08,	unit tub
-.29,.29,.08,-.14,,	unit tube
-.28,.34,,-.1,,	unit yd
,-.2,-.15,,.11,-.13	use buy before
-.09,.15,-.09,-.13,.11,	use buy behind
-.08,.26,,-.09,-.1,	use buy imperative behind
,.09,-.13,,-.21,	use buy modal behind
-.1,-.37,-.15,-.22,.32,	use buy past behind
.18,,,,,	use have before
,-.08,.11,,,	use have behind
.13,,,,,	use have imperative behind
.18,,,,,	use have present before
,-.09,.12,,,	use have present behind
.09,,,,,	use measure before
.17,,,,,	use measure behind
.19,-.14,,,,	use measure imperative behind
,-.15,,,,	use measure owed behind
,,,,,.13	use measure past before
.14,,,,,	use measure past behind
.12,,,,,	use measure present before
.2,,,,,	use measure present behind
,,.09,,,	use move before
,.17,,-.09,,	use move imperative behind
.13,,,,,	use move modal before
.16,-.09,,,,	use move modal behind
.09,-.08,-.16,-.22,.14,	use move owed behind
,,.15,,,	use move past before
.11,,,,,	use move present before
.2,,,,,	use move present behind
.1,,,-.08,,	use need before
,.16,,,,	use need behind
-.15,,.1,,,	use need modal behind
.1,,,,,	use need owed before
,.15,,,,	use need owed behind
,.13,-.14,-.13,,	use need past before
,.09,-.13,-.18,-.09,	use need past behind
-.12,.26,,-.15,,	use need present behind
.15,,,,,	use null before
.08,,,,,	use null behind
.14,,,,,	use null copula before
.09,,,,,	use null copula behind
.22,,,-.09,,	use null imperative behind
.24,,,-.11,,	use null modal before
,,-.14,.09,,	use null modal behind
.1,,,,,	use null no
.1,,,,,	use null none no
.14,,,,,	use null owed before
,,.11,-.1,,	use null owed behind
.11,,,,,	use other before
.1,,,,,	use other copula before
.1,,,,,	use other copula behind
,.22,,-.09,,	use other imperative behind
,,,-.13,,	use other modal before
.09,,,,,	use other modal behind
,.16,-.09,,,	use other owed behind
.13,,,-.1,,	use other past before
,-.11,.09,,,	use other past behind
.24,,,,,	use other present before
.13,,-.11,,,	use other present behind
.15,,,,,	use say before
.15,,,,,	use say behind
.14,,,,,	use say imperative behind
.27,-.09,,,,	use say past before
.36,-.11,-.1,-.12,,	use say past behind
,.1,,,,	use say present before
,.09,,-.09,,	use say present behind
.26,-.09,,,,	use see before
.14,,,,,	use see behind
.18,,,,,	use see imperative behind
.17,,,,,	use see modal behind
.09,,,,,	use see owed behind
,,.16,-.08,,	use see past behind
.21,,,-.09,,	use see present behind
-.23,-.16,-.12,.3,,	use use before
,,-.08,.22,,	use use behind
-.23,-.16,-.12,.3,,	use use past before
,-.1,-.08,.23,,	use use past behind
-.15,-.15,-.1,.32,,	use use present behind
.15,,,,,	use work before
.15,,,,,	use work behind
.18,,,,,	use work imperative before
.19,,,,,	use work imperative behind
.12,,,,,	use work modal before
.23,,,,,	use work modal behind
.21,,-.09,,,	use work owed before
.1,,,,,	use work owed behind
.15,,,,,	use work past before
.13,-.09,,.13,,	use work past behind
.13,,,,,	use work present behind
.16,-.1,,,,	verb add imperative
.15,-.23,.14,-.21,-.13,-.11	verb arrive before
-.12,,.21,-.25,-.13,-.12	verb arrive past
.2,-.08,,,,	verb ask behind
.22,-.11,,,,	verb ask imperative
.14,,,,,	verb ask past
.1,,,,,	verb be before
.1,,,,,	verb be behind
.1,,,,,	verb be copula
.24,,,-.12,,	verb be past
.26,-.13,,-.21,,	verb bend before
.26,-.13,,-.21,,	verb bend past
,-.11,,,,	verb blow behind
,-.12,,,,	verb blow past
.16,,,,,	verb blow present
.18,-.12,-.09,-.11,,	verb bow before
.1,,,,,	verb bow present
.32,-.11,,-.14,,	verb break past
-.09,.21,,,,	verb bring behind
,.1,,,,	verb bring imperative
-.12,.2,,,,	verb bring modal
-.13,.17,-.11,,,	verb bring present
-.15,,,.22,,	verb burn behind
-.15,,,.22,,	verb burn past
,,-.11,-.16,.13,	verb buy behind
,.19,-.09,-.12,-.2,-.11	verb buy imperative
-.11,-.28,-.16,,.16,.09	verb buy past
.09,-.1,,,,	verb call behind
,-.09,,,,	verb call imperative
.22,-.09,,,,	verb call present
,-.18,-.13,.14,,	verb can behind
,-.19,-.14,.1,,	verb can modal
.33,,,-.21,,	verb cap past
.18,-.08,,,,	verb catch before
.2,-.09,,,,	verb catch modal
.18,,,,,	verb caulk before
.21,-.12,,,,	verb caulk imperative
.11,,,,,	verb center past
-.3,,-.11,.33,,-.08	verb change behind
-.18,-.27,-.12,.24,,	verb change present
.09,,.09,,,	verb check behind
.18,,,,,	verb check imperative
,,.16,-.08,,	verb check past
.23,,,,,	verb check present
.33,-.11,,-.18,-.08,	verb chip past
.14,,,,,	verb clear before
-.18,,-.09,.21,,	verb clear behind
.09,,,,,	verb clear present
.16,,,,,	verb close behind
.19,,,,,	verb close present
.13,,,,,	verb come before
.33,-.14,-.13,-.13,,	verb come behind
.32,-.1,-.16,,,	verb come owed
.15,,,,,	verb come present
,-.16,,.11,,	verb count behind
,-.16,,.16,,	verb count present
-.16,.14,-.11,.11,-.1,-.14	verb crack before
-.13,.13,-.11,.1,-.09,-.13	verb crack past
.1,,,,,	verb cut before
.22,-.08,,,,	verb cut behind
.16,,,,,	verb cut owed
.13,,,,,	verb cut past
.16,-.09,,-.1,,	verb ding behind
.18,-.09,,-.1,,	verb ding past
-.09,,.14,-.13,,	verb do before
,,.09,,,	verb do behind
-.31,,.2,-.12,-.09,	verb do imperative
,,.11,-.12,,	verb do modal
.13,,,,,	verb do owed
.26,-.14,-.08,-.09,,	verb doesn't modal
.13,,,,,	verb dont before
.2,-.08,,,,	verb dont modal
.18,,,,,	verb drill before
.22,-.09,,-.16,,	verb drill behind
.15,,,,,	verb drill modal
.21,,,-.15,,	verb drill past
.11,,,,,	verb drip before
.11,,,,,	verb drip behind
.09,,,,,	verb drip present
.23,-.09,,,,	verb drop before
.2,,,,,	verb drop behind
.15,,,,,	verb drop past
-.11,.19,-.12,-.09,,	verb dump before
,.16,-.09,,,	verb dump present
.1,,,,,	verb end behind
.1,,,,,	verb end past
,.1,-.16,-.13,,	verb falta behind
,.1,-.16,-.13,,	verb falta owed
.24,-.12,,-.12,,	verb feel behind
.24,-.12,,-.12,,	verb feel modal
.13,.08,-.18,-.22,,-.08	verb figure behind
-.11,.19,-.12,-.2,-.09,-.09	verb figure imperative
.21,,,-.16,,	verb fill behind
.18,-.09,,,,	verb find past
.26,-.08,,-.08,,	verb finish behind
.23,-.18,-.11,,,	verb finish modal
.19,,,-.09,,	verb finish past
.15,,,,,	verb finish present
,-.14,-.08,.11,,	verb float behind
,.09,-.12,-.13,-.08,	verb flush behind
-.15,.22,-.19,-.17,-.14,-.1	verb forget behind
,-.14,.22,-.29,-.11,-.09	verb fre behind
,-.13,.21,-.29,-.11,-.09	verb fre past
.18,-.09,,-.14,,	verb get before
,,.09,-.09,,	verb get behind
,.29,-.25,-.1,,	verb get imperative
.22,-.15,-.13,,,	verb get modal
,.16,-.14,,,	verb get owed
,-.13,.24,-.1,,	verb get past
.22,,-.11,-.11,,	verb give behind
,.08,-.12,-.12,,	verb give past
,-.1,,,,	verb glue before
,-.1,,,,	verb glue past
,,-.08,,,	verb go behind
.16,,,,,	verb go modal
.1,-.08,-.13,-.19,.13,	verb go owed
,-.09,-.11,.29,,	verb go past
.15,,,,,	verb go present
.15,,,,,	verb gotta behind
.14,,,,,	verb gotta owed
,,,-.09,,	verb grab behind
.09,,,,,	verb grab imperative
.21,,,,,	verb grout before
.1,,,,,	verb grout imperative
-.11,.2,-.1,-.17,,	verb guess behind
-.11,.2,-.1,-.17,,	verb guess present
,-.09,,.09,,	verb hang before
,-.14,,.15,,	verb hang behind
.1,-.08,,,,	verb hang owed
-.15,-.1,-.09,.26,,	verb hang past
.21,-.09,,,,	verb has behind
.2,-.08,,,,	verb has owed
.18,,,,,	verb have before
,-.08,.11,,,	verb have behind
.13,,,,,	verb have imperative
.09,,,,,	verb have present
,,,.08,,	verb hit behind
.19,-.16,,,,	verb hit imperative
,,,.15,,	verb hit past
.14,,,,,	verb hit present
.14,,,,,	verb hold before
.14,,,,,	verb hold behind
.16,,,,,	verb hold past
.17,-.08,,,,	verb hook modal
.15,,,,,	verb hum before
.14,,,,,	verb hum present
,.12,,-.18,,	verb i'll behind
,.12,,-.18,,	verb i'll modal
.2,-.09,,,,	verb keep behind
.16,,,,,	verb keep present
,,,-.08,.18,	verb land before
.2,-.08,,-.08,,	verb land behind
-.11,,,,.2,	verb land present
-.19,,-.08,.23,,	verb lay behind
-.19,,-.09,.23,,	verb lay past
.1,,,,,	verb leak before
,,.17,-.1,,	verb leave before
.23,-.09,,-.13,,	verb leave behind
.18,-.1,,,,	verb leave imperative
,,.15,-.14,,	verb leave past
.16,,,,,	verb leave present
,,,.09,,	verb let behind
.16,,,,,	verb let imperative
.18,,,,,	verb like behind
.14,,,,,	verb look behind
.15,,,,,	verb look present
.15,,,,,	verb lose before
.26,-.11,,,,	verb lose behind
.23,,,,,	verb lose past
.09,,,,,	verb make behind
,.09,-.1,-.1,,	verb make imperative
.19,-.11,,,,	verb make modal
,-.16,-.09,,,	verb make past
.12,,,,,	verb make present
.21,,,-.14,,	verb mark behind
.21,,,-.14,,	verb mark past
.17,,,,,	verb measure before
,.18,,-.13,,	verb measure behind
,.14,,-.09,,	verb measure past
.16,,,,,	verb measure present
-.19,.25,,-.1,,	verb miss behind
,.17,,,,	verb miss present
.17,-.09,,,,	verb move before
,.13,-.08,-.09,,	verb move modal
.13,,,,,	verb move owed
.15,,,,,	verb must owed
.16,,,,,	verb need before
,.18,,,,	verb need behind
,,.18,-.11,,	verb need modal
,.19,,,,	verb need owed
,,,-.09,,	verb need past
.14,,,,,	verb null before
.09,,,,,	verb null behind
.11,,,,,	verb null copula
.22,,,-.09,,	verb null imperative
.1,,,,,	verb null no
.1,,,,,	verb null none
.15,,,,,	verb open behind
.11,,,,,	verb open owed
-.13,.21,-.12,-.17,.1,-.09	verb order behind
-.22,.31,-.08,-.17,-.12,	verb order imperative
,-.3,-.14,-.22,.37,-.11	verb order past
,.1,-.13,-.2,-.2,-.09	verb order present
,,-.17,-.19,.15,-.1	verb owe behind
,,-.17,-.19,.15,-.1	verb owe present
,,,.1,,	verb pack behind
,-.08,,,,	verb pack past
.19,,,,,	verb paint before
.13,,,-.11,,	verb paint behind
.16,,,-.11,,	verb paint past
.21,,,,,	verb pass behind
.15,,,,,	verb pass past
.2,,,-.1,,	verb patch past
-.13,.1,,-.2,.21,	verb pick behind
,.17,,,-.13,	verb pick imperative
-.09,-.27,-.11,-.26,.35,-.08	verb pick past
.19,,,,,	verb pipe past
.17,,,,,	verb pull before
.17,,,,,	verb pull behind
.18,,,,,	verb pull imperative
.11,,,,,	verb pull modal
.19,-.09,,,,	verb pull owed
.13,,,,,	verb pull past
.21,-.09,,-.1,,	verb pull present
.18,,,,,	verb push behind
,,,.08,,	verb put behind
.1,,-.08,-.25,,	verb put imperative
.32,-.24,,-.16,,	verb put modal
,-.1,,.15,,	verb put past
,.13,,,,	verb read before
.18,,,,,	verb read behind
,.08,,,,	verb read present
,-.2,-.11,.16,-.11,-.09	verb replace before
,-.09,-.15,.08,,	verb replace behind
,-.17,-.18,.18,-.09,-.11	verb replace past
.11,,,,,	verb reset behind
.11,,,,,	verb reset imperative
.12,,,,,	verb rip before
,-.17,.15,,,	verb rip behind
,-.19,.16,,,	verb rip owed
.15,,,,,	verb rip past
.17,,,,,	verb roll behind
,-.09,-.09,-.19,.18,	verb run before
,,-.08,.09,,	verb run behind
,,,-.2,,	verb run imperative
,,-.09,,,	verb run past
.12,,,,,	verb sag before
.12,,,,,	verb sag present
.18,,,,,	verb sand before
.12,-.1,.08,-.14,,	verb sand behind
.19,,,,,	verb sand imperative
.23,-.13,-.08,,,	verb sand owed
,,.15,-.17,,	verb sand past
.17,,,,,	verb sand present
.25,,,,,	verb say past
,.16,,,,	verb say present
.15,,,,,	verb scrape behind
,-.09,-.09,-.12,,.17	verb scratch past
,,-.09,.13,,	verb screw behind
,,-.09,.13,,	verb screw past
,,,-.08,,	verb scribe behind
.09,,,-.09,,	verb scribe past
,-.09,-.09,.2,,	verb seal past
.14,,,,,	verb see behind
.13,,,,,	verb see owed
-.09,,-.2,-.16,-.09,.23	verb send behind
-.11,,-.21,-.19,-.11,.27	verb send past
.27,-.18,-.09,-.1,,-.12	verb send present
.16,-.17,-.09,,,	verb set behind
.16,-.17,-.09,,,	verb set past
.25,-.14,,-.1,,	verb shim before
.23,-.12,,-.19,,	verb shim behind
.27,-.15,-.1,-.23,,	verb shim past
,-.09,,,,.18	verb show before
,-.08,,-.14,,.2	verb show past
.28,-.11,,,,-.08	verb show present
,,,.11,,	verb sign behind
.09,,,,,	verb silicone behind
.13,,,,,	verb silicone owed
,,-.1,,,	verb sister behind
,-.13,-.11,.12,,	verb sister past
.16,,,,,	verb sit before
,-.11,,,,	verb sit behind
.12,,,,,	verb sit modal
,-.17,,.08,,	verb sit owed
.19,,,,,	verb sit present
.16,,,,,	verb skim behind
.16,,,-.09,,	verb skim past
.27,,,-.2,,	verb snake behind
.3,,,-.22,,	verb snake past
-.23,.31,-.12,-.35,-.11,-.09	verb snap past
-.35,.32,,.16,,	verb stain before
-.26,.27,-.08,.11,,	verb stain past
.22,-.12,,,,	verb start before
.14,,,,,	verb start behind
.14,,,,,	verb start present
.12,,,,,	verb stick before
.1,,,,,	verb stick present
.2,,,-.08,,	verb stop behind
.16,,,-.09,,	verb stop past
.3,-.12,-.12,-.17,,	verb strip before
.3,-.12,-.12,-.17,,	verb strip past
.19,-.09,,,,	verb supposed owed
-.24,,-.1,.25,,	verb swap before
,-.14,,.11,,	verb swap behind
.19,,,,,	verb swap imperative
-.22,-.14,,.32,,	verb swap past
,.11,-.13,-.18,,-.09	verb take before
,,-.1,,-.09,.12	verb take behind
-.14,.25,-.19,-.23,-.09,-.1	verb take modal
,-.17,-.16,,-.09,.15	verb take past
-.14,-.21,.14,.14,,-.13	verb take present
-.14,,.21,,,	verb tape before
,.12,-.16,-.08,,	verb tape behind
-.16,.12,.12,-.09,,	verb tape past
.1,,,,,	verb tear past
.24,-.18,,,,	verb tell behind
.1,,,,,	verb test before
.12,,,,,	verb test past
,-.11,.13,-.11,,	verb think behind
,-.1,.11,-.1,,	verb think present
-.18,,-.11,,.15,	verb throw behind
-.17,.08,-.11,-.18,.15,	verb throw imperative
.14,,,,,	verb trim before
.2,-.08,,,,	verb trim owed
,-.09,.1,-.2,-.12,-.13	verb try behind
.18,,,,,	verb turn before
.34,-.13,-.18,-.22,,	verb turn behind
.23,,,-.12,,	verb turn past
-.23,-.16,-.12,.3,,	verb use before
,,-.08,.22,,	verb use behind
,-.1,-.08,.28,,	verb use past
-.15,-.15,-.1,.32,,	verb use present
.18,,,,,	verb wait behind
.23,-.12,-.12,-.09,,	verb wait present
,.15,-.09,-.09,,	verb want before
-.25,.15,-.11,.1,,	verb want modal
.19,-.09,,,,	verb want owed
,.14,-.19,-.18,-.11,-.08	verb want past
-.12,.26,,-.15,,	verb want present
.13,,,,,	verb weep before
.12,,,,,	verb weep present
-.25,,.11,-.22,,	volume after have sentence
,-.25,.21,-.27,,-.08	volume after need far
-.08,.22,,,,	volume after need here
-.14,.29,-.21,-.17,,	volume after need sentence
-.28,,.12,.15,,	volume after none far
-.24,,-.1,.24,,	volume after none sentence
-.25,,,.16,,-.08	volume after used sentence
-.3,-.19,.47,-.23,,	volume cue have
-.19,.22,-.1,,,	volume cue need
-.26,,,.22,,	volume cue used
-.19,-.14,.32,-.18,,	volume have present behind
-.1,,.08,,-.1,-.09	volume left #
-.15,.1,,,,	volume left and
-.09,-.09,.19,-.13,,	volume left have
,.17,,,,	volume left need
,,-.09,.24,,	volume left use
-.25,,-.24,.26,-.08,	volume name flawed
-.26,-.12,.26,,,	volume named before material
-.24,,.22,-.14,,	volume named here finish
-.23,.2,,,,	volume named here material
,,-.28,,-.1,-.1	volume named here word
,.23,,,,	volume need owed behind
,,.1,,-.11,-.11	volume null none no
,.25,-.11,,,	volume other imperative behind
-.31,.15,,.16,,	volume right #
-.22,.26,,-.18,,	volume right and
-.11,-.11,.23,-.11,,	volume right leave
-.26,.35,-.12,-.15,,	volume says imperative behind
,,.1,,-.11,-.11	volume says none no
,.23,,,,	volume says owed behind
-.22,,,.18,,	volume says past before
-.23,,,.08,,	volume says past behind
-.26,-.24,.15,.09,-.09,-.09	volume says present behind
-.08,.13,,,,	volume sold so false
-.29,,.16,,,	volume sold so true
-.08,-.11,-.1,.29,,	volume use past behind
-.08,,.11,-.12,,	volume verb get behind
-.19,-.14,.32,-.18,,	volume verb have behind
,.23,,,,	volume verb need behind
,,.1,,-.11,-.11	volume verb null no
-.08,-.11,-.1,.29,,	volume verb use behind
,,,,-.11,-.11	volume whole clause
-.14,-.27,,.2,,	weight cue used
-.17,.1,-.15,.11,,	weight left #
,,-.17,,-.08,-.08	weight null none no
,,-.15,,,	weight right #
,,-.17,,-.08,-.08	weight says none no
,-.21,,,,	weight says past behind
-.3,.16,,.17,-.08,-.08	weight sold so false
,,-.17,,-.08,-.08	weight verb null no
.09,,,,,	who goods copula
,.17,,,,	who goods modal
.21,,,,,	who goods owed
.16,,,,,	who goods present
-.11,,,.08,,	who nobody copula
,.12,,,,	who nobody imperative
,.09,,-.1,,	who nobody modal
.1,,,,,	who nobody none
,.21,,,,	who nobody owed
,-.13,,.09,,	who nobody past
-.15,-.16,.31,-.17,,	who nobody present
,.11,,-.1,,	who person copula
.17,,,,,	who person modal
,.1,,,,	who person owed
.1,,,,,	who person past
.14,,,,,	who thing copula
.15,,,,,	who thing owed
.13,-.09,,,,	who thing past
.15,,,,,	who thing present
,-.24,.23,,-.08,	whole false
-.09,,,,,	whole true
`;

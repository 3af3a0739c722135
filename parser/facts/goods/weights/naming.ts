/** Written by `tests/learn/goods.ts`: how much each thing seen of a name speaks for it. Weight, then what was seen. */
export const NAMING = `
.09	alone
-.46	alone area
.35	alone fixture
.14	alone material
.63	alone part
-.06	alone surface
-.07	alone word
.24	apart false
-.42	apart true
.45	back 0
.59	back 1
.1	back 2
-.25	back 3
-.32	back 4
-.22	back 5
-.29	back 6
-.21	back 7
-.29	back 8
.55	before more
-.27	before new
-.05	before no
-.17	counted
.32	counted area
-.1	counted fixture
-.22	counted surface
-.3	counted tool
-.1	counted word
-.67	flawed false
-.52	goods false false
-.35	goods false true
.65	goods true false
-.09	goods true true
-.18	kind area
.48	kind area article
-.32	kind area count
-.53	kind area length
-.11	kind area pack
-.16	kind area pointer
-.08	kind area volume
-.29	kind area weight
-.13	kind fixture
-.43	kind fixture area
-.08	kind fixture article
-.15	kind fixture count
-.53	kind fixture length
-.68	kind fixture pointer
-.07	kind fixture volume
-.07	kind fixture weight
.23	kind material
.82	kind material area
-.11	kind material article
.13	kind material count
.56	kind material length
.24	kind material pack
-.16	kind material pointer
-.11	kind material volume
.69	kind material weight
.08	kind part
-.13	kind part area
-.19	kind part article
.37	kind part count
.06	kind part length
-.28	kind part pack
.2	kind part pointer
-.26	kind part volume
-.45	kind part weight
-.21	kind surface
-.69	kind surface area
.24	kind surface article
-.31	kind surface count
-.31	kind surface length
-.23	kind surface pack
.26	kind surface pointer
.25	kind surface volume
-.62	kind surface weight
.11	kind tool
.24	kind tool article
.24	kind tool count
-.25	kind tool pack
.37	kind tool pointer
-.36	kind tool volume
-.21	kind word
-.73	kind word area
-.21	kind word article
-.17	kind word count
-.39	kind word length
-.15	kind word pack
-.1	kind word pointer
-.35	kind word volume
-.42	kind word weight
-.1	kind work
-.11	kind work count
-.08	kind work pack
.19	label
-.12	like told 1
-.44	like told 2
.87	modified
-.56	more area
-.28	more fixture
.43	more material
-.22	more surface
-.17	more tool
-.08	more word
-.14	never told false
-.26	never told true
-.32	not sold so
-.15	of -
-.09	of about
-.38	of after
-.26	of at
-.19	of before
-.3	of behind
-.12	of by
-.12	of down
-.62	of for
-.08	of from
-.27	of off
-.23	of on
-.19	of out
-.36	of over
-.38	of past
-.15	of to
-.12	of up
-.23	of with
.28	of without
-.45	other room
.34	own code
-.87	own false
-.2	own first area
.56	own first code
.45	own first material
.37	own first part
.45	own first surface
-.11	own first word
-.19	own goods false
.43	own goods true
.34	own head code length
-.29	own head finish
.55	own head finish count
-.5	own head finish pack
.3	own head finish volume
-.1	own head fixture
-.21	own head fixture count
.41	own head material
.51	own head material area
.37	own head material count
.45	own head material length
.41	own head material pack
.42	own head material volume
.32	own head material weight
.28	own head part
.25	own head part count
.42	own head part pack
.81	own head surface
.67	own head surface count
.64	own head tool
.64	own head tool count
.08	own head word
.37	own head word pack
.5	own head word volume
.24	own last adhesive
.58	own last board
.27	own last brackets
.35	own last cable
.29	own last caulk
.52	own last clamps
-.45	own last couplings
.36	own last deck screws
.63	own last elbows
-.11	own last em
.26	own last filler
.49	own last filters
.31	own last flashing tape
.72	own last foam
.25	own last glue
-.17	own last gray
.29	own last hangers
.72	own last hinges
.57	own last kit
.46	own last knobs
.39	own last mesh
.46	own last mortar
.42	own last mud
.41	own last panels
.34	own last pins
.19	own last pipe
-.14	own last please
.37	own last ply
.46	own last poly
.25	own last primer
.54	own last screws
.42	own last sealant
.25	own last sealer
.37	own last self leveler
.26	own last silicone
.31	own last structural screws
.35	own last sweep
.55	own last tape
.46	own last thinset
-.21	own last those
.16	own last tiles
.49	own last treads
.21	own last white
-.34	own last x
-.3	own of false article
.32	own of false count
-.12	own of false pack
.51	own of false volume
.56	own of true area
-.21	own of true count
.57	own of true length
.5	own of true pack
.42	own of true volume
.32	own of true weight
.35	own plural
.35	own pointing false
-.65	own pointing true
.4	own true
.6	own unit area
-.3	own unit article
.23	own unit count
.45	own unit length
.36	own unit pack
.46	own unit volume
.32	own unit weight
-.33	own verb
.29	own words 1
.41	own words 2
-.12	own words 3
.66	own words 4
-.11	place -
.45	place here
-.24	place rest
-.08	place subject
-.15	plural false article -
-.37	plural false count false
-.38	plural false count true
-.11	plural false length true
-.05	plural false pack -
-.16	plural false pack false
-.27	plural false pack true
.11	plural false pointer -
-.5	plural false volume false
-.42	plural false volume true
-.57	plural false weight false
-.4	plural false weight true
-.51	plural true area true
.27	plural true article -
-.37	plural true count false
.4	plural true count true
-.43	plural true length true
.05	plural true pack -
-.23	plural true pack false
.1	plural true pointer -
.08	plural true volume false
.18	plural true volume true
.24	plural true weight false
.4	plural true weight true
-.35	pointing false
.65	pointing true
.24	ran out
.35	rank 0
.11	rank 0 article
.33	rank 0 count
.67	rank 0 pointer
.17	rank 1 article
.43	rank 1 pointer
-.05	rank 2
.35	rank 2 article
-.07	rank 2 count
-.44	rank 2 pointer
-.21	rank 3
-.56	rank 3 article
-.19	rank 3 count
-.62	rank 3 pointer
-.14	rank 4
-.3	rank 4 article
-.12	rank 4 count
-.44	rank 4 pointer
-.12	rank 5
-.19	rank 5 article
-.12	rank 5 count
-.44	rank 5 pointer
-.38	rank 6
-1.01	rank 6 article
-.33	rank 6 count
-.78	rank 6 pointer
-.06	said copula
-.21	said imperative
-.24	said modal
-.19	said owed
-.07	said present
.25	same unit
.42	sentences 0
-.43	sentences 1
-.38	sentences 2
-.27	sentences 3
-.2	sized
1.06	sold so
-.07	the
-.44	told 1 area
-.84	told 1 article
.29	told 1 count
-.28	told 1 length
-.15	told 1 pack
.26	told 1 pointer
-.22	told 1 volume
.31	told 1 weight
-.24	told 2
-.46	told 2 article
-.43	told 2 count
-.06	told 2 length
.15	told 2 pack
-.68	told 2 pointer
-.45	told 2 volume
.12	told 3
.17	told 3 pack
.06	told before
-.07	told by false
.09	told by true
-.39	told here
.46	touches false
.19	touches true
.19	use have
.35	use use
-.3	words 1
.27	words 3
.12	words 4
`;

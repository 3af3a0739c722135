/** Written by `tests/learn/goods.ts`: how much each thing seen of a name speaks for it. Weight, then what was seen. */
export const NAMING = `
.09	alone
-.46	alone area
.35	alone fixture
.14	alone material
.64	alone part
-.06	alone surface
-.06	alone word
-.38	apart true
.45	back 0
.58	back 1
.1	back 2
-.25	back 3
-.32	back 4
-.21	back 5
-.29	back 6
-.21	back 7
-.28	back 8
.55	before more
-.27	before new
-.07	before no
-.18	counted
.4	counted area
-.1	counted fixture
-.22	counted surface
-.31	counted tool
-.1	counted word
-.67	flawed false
-.57	goods false false
-.32	goods false true
.61	goods true false
-.07	goods true true
-.18	kind area
.44	kind area article
-.32	kind area count
-.53	kind area length
-.11	kind area pack
-.16	kind area pointer
-.09	kind area volume
-.29	kind area weight
-.13	kind fixture
-.43	kind fixture area
-.08	kind fixture article
-.16	kind fixture count
-.52	kind fixture length
-.66	kind fixture pointer
-.07	kind fixture volume
.23	kind material
.83	kind material area
-.16	kind material article
.12	kind material count
.59	kind material length
.24	kind material pack
-.16	kind material pointer
-.09	kind material volume
.69	kind material weight
.08	kind part
-.13	kind part area
-.21	kind part article
.36	kind part count
.08	kind part length
-.3	kind part pack
.22	kind part pointer
-.26	kind part volume
-.42	kind part weight
-.21	kind surface
-.69	kind surface area
.2	kind surface article
-.31	kind surface count
-.3	kind surface length
-.22	kind surface pack
.26	kind surface pointer
.23	kind surface volume
-.58	kind surface weight
.12	kind tool
.24	kind tool article
.23	kind tool count
-.27	kind tool pack
.35	kind tool pointer
-.35	kind tool volume
-.21	kind word
-.69	kind word area
-.27	kind word article
-.18	kind word count
-.38	kind word length
-.17	kind word pack
-.12	kind word pointer
-.36	kind word volume
-.39	kind word weight
-.1	kind work
-.12	kind work count
-.08	kind work pack
.19	label
-.14	like told 1
-.43	like told 2
.71	modified
-.55	more area
-.29	more fixture
.4	more material
-.22	more surface
-.17	more tool
-.09	more word
-.14	never told false
-.27	never told true
-.33	not sold so
-.16	of -
-.08	of about
-.37	of after
-.25	of at
-.19	of before
-.29	of behind
-.12	of by
-.12	of down
-.61	of for
-.09	of from
-.26	of off
-.25	of on
-.19	of out
-.35	of over
-.37	of past
-.17	of to
-.11	of up
-.24	of with
.28	of without
-.44	other room
.24	own code
-.71	own false
.31	own first area
.79	own first code
.45	own first material
.38	own first part
.48	own first surface
-.07	own first word
-.14	own goods false
.43	own goods true
.39	own head code
.24	own head code length
-.31	own head finish
.45	own head finish count
-.54	own head finish pack
.32	own head finish volume
-.1	own head fixture
-.22	own head fixture count
.41	own head material
.54	own head material area
.37	own head material count
.49	own head material length
.4	own head material pack
.42	own head material volume
.43	own head material weight
.29	own head part
.26	own head part count
.42	own head part pack
.8	own head surface
.67	own head surface count
.67	own head tool
.67	own head tool count
.13	own head word
.52	own head word length
.42	own head word pack
.47	own head word volume
.23	own last adhesive
.57	own last board
.28	own last brackets
.27	own last cable
.46	own last caulk
.54	own last clamps
-.44	own last couplings
.36	own last deck screws
.61	own last elbows
.26	own last filler
.5	own last filters
.32	own last flashing tape
.7	own last foam
.27	own last glue
-.27	own last gray
.3	own last hangers
.76	own last hinges
.59	own last kit
.46	own last knobs
.32	own last mesh
.46	own last mortar
.41	own last mud
.44	own last panels
.34	own last pins
.31	own last pipe
.39	own last ply
.46	own last poly
.26	own last primer
.56	own last screws
.4	own last sealant
.26	own last sealer
.36	own last self leveler
.23	own last silicone
.32	own last structural screws
.31	own last sweep
.55	own last tape
.49	own last thinset
.17	own last tiles
.51	own last treads
.16	own last white
-.41	own of false article
.34	own of false count
.52	own of false volume
.58	own of true area
-.24	own of true count
.55	own of true length
.51	own of true pack
.41	own of true volume
.43	own of true weight
.33	own plural
.37	own pointing false
-.75	own pointing true
.36	own true
.64	own unit area
-.41	own unit article
.26	own unit count
.55	own unit length
.39	own unit pack
.45	own unit volume
.43	own unit weight
-.23	own verb
.35	own words 1
.39	own words 2
-.1	own words 3
.66	own words 4
-.11	place -
.45	place here
-.25	place rest
-.08	place subject
-.11	plural false article -
-.37	plural false count false
-.39	plural false count true
-.11	plural false length true
-.16	plural false pack false
-.29	plural false pack true
.1	plural false pointer -
-.51	plural false volume false
-.44	plural false volume true
-.52	plural false weight false
-.39	plural false weight true
-.5	plural true area true
.27	plural true article -
-.35	plural true count false
.39	plural true count true
-.44	plural true length true
-.25	plural true pack false
.1	plural true pointer -
.07	plural true volume false
.18	plural true volume true
.34	plural true weight false
.39	plural true weight true
-.37	pointing false
.75	pointing true
.26	ran out
.34	rank 0
.13	rank 0 article
.32	rank 0 count
.66	rank 0 pointer
.11	rank 1 article
.36	rank 1 pointer
-.05	rank 2
.39	rank 2 article
-.07	rank 2 count
-.43	rank 2 pointer
-.2	rank 3
-.55	rank 3 article
-.18	rank 3 count
-.64	rank 3 pointer
-.13	rank 4
-.31	rank 4 article
-.12	rank 4 count
-.45	rank 4 pointer
-.13	rank 5
-.13	rank 5 article
-.11	rank 5 count
-.43	rank 5 pointer
-.38	rank 6
-.93	rank 6 article
-.33	rank 6 count
-.79	rank 6 pointer
-.06	said copula
-.23	said imperative
-.24	said modal
-.19	said owed
-.07	said present
.26	same unit
.42	sentences 0
-.43	sentences 1
-.37	sentences 2
-.27	sentences 3
-.19	sized
1.06	sold so
-.07	the
-.45	told 1 area
-.81	told 1 article
.28	told 1 count
-.27	told 1 length
-.14	told 1 pack
.27	told 1 pointer
-.22	told 1 volume
.34	told 1 weight
-.24	told 2
-.5	told 2 article
-.43	told 2 count
-.06	told 2 length
.14	told 2 pack
-.71	told 2 pointer
-.46	told 2 volume
.11	told 3
.08	told 3 count
.17	told 3 pack
.06	told before
-.07	told by false
.08	told by true
-.37	told here
.31	touches false
.25	touches true
.18	use have
.35	use use
-.31	words 1
.27	words 3
.09	words 4
`;

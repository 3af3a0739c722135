/** Written by `tests/learn/goods.ts`: how much each thing seen of a name speaks for it. Weight, then what was seen. */
export const NAMING = `
.22	alone
-.12	alone area
.19	alone fixture
.11	alone material
.59	alone part
-.13	alone surface
.16	alone word
.03	apart false
-.37	apart true
.37	back 0
.54	back 1
.12	back 2
-.26	back 3
-.27	back 4
-.22	back 5
-.29	back 6
-.23	back 7
-.19	back 8
.6	before more
-.3	before new
-.17	counted
-.32	counted area
-.11	counted fixture
-.04	counted part
-.27	counted surface
-.22	counted tool
-.12	counted word
.03	flawed false
-.63	goods false false
-.33	goods false true
.67	goods true false
-.03	goods true true
-.18	kind area
.33	kind area article
-.3	kind area count
-.43	kind area length
-.12	kind area pack
.31	kind area pointer
-.12	kind area volume
-.32	kind area weight
-.11	kind fixture
-.4	kind fixture area
-.31	kind fixture article
-.13	kind fixture count
-.49	kind fixture length
.06	kind fixture pack
-.71	kind fixture pointer
-.39	kind fixture volume
-.04	kind fixture weight
.19	kind material
.75	kind material area
-.06	kind material article
.08	kind material count
.51	kind material length
.27	kind material pack
-.15	kind material pointer
-.1	kind material volume
.57	kind material weight
.11	kind part
-.15	kind part area
-.1	kind part article
.42	kind part count
-.33	kind part pack
-.08	kind part pointer
-.3	kind part volume
-.39	kind part weight
-.18	kind surface
-.66	kind surface area
.3	kind surface article
-.31	kind surface count
-.3	kind surface length
-.19	kind surface pack
.47	kind surface pointer
.12	kind surface volume
-.55	kind surface weight
.07	kind tool
.25	kind tool article
.24	kind tool count
-.34	kind tool pack
.31	kind tool pointer
-.21	kind word
-.75	kind word area
-.25	kind word article
-.19	kind word count
-.26	kind word length
-.19	kind word pack
-.16	kind word pointer
-.07	kind word volume
-.39	kind word weight
-.13	kind work
-.14	kind work count
-.12	kind work pack
.13	label
-.13	like told 1
-.26	like told 2
.02	like told 3
.74	modified
-.47	more area
-.34	more fixture
.51	more material
-.12	more part
-.2	more surface
-.2	more tool
-.08	more word
-.06	never told false
-.32	never told true
-.38	not sold so
-.16	of -
-.52	of about
-.08	of above
-.39	of after
-.26	of at
-.28	of before
-.44	of behind
.25	of by
-.1	of down
-.46	of for
-.1	of from
.04	of of
-.29	of off
-.25	of on
-.1	of out
-.33	of over
-.36	of past
-.16	of to
-.13	of up
-.27	of with
.24	of without
-.42	other room
.26	own code
-.74	own false
.4	own first area
.7	own first code
-.05	own first finish
.25	own first fixture
.41	own first material
.52	own first part
.59	own first surface
.8	own first tool
-.03	own first word
-.12	own goods false
.41	own goods true
.37	own head code
.26	own head code length
-.4	own head finish
-.13	own head finish count
-.58	own head finish pack
.64	own head finish volume
.13	own head fixture
.41	own head material
.52	own head material area
.51	own head material count
.48	own head material length
.34	own head material pack
.51	own head material volume
.35	own head material weight
.23	own head part
.21	own head part count
.45	own head part pack
.72	own head surface
.69	own head surface count
.41	own head surface pack
.64	own head tool
.64	own head tool count
.05	own head word
-.35	own head word article
-.19	own head word count
.55	own head word length
.57	own head word pack
.07	own head word volume
.34	own last adhesive
.61	own last board
.59	own last boards
.3	own last brackets
.38	own last cabinet screws
.33	own last cable
.55	own last caulk
.43	own last clamps
-.48	own last couplings
.4	own last deck screws
.7	own last discs
.5	own last elbows
-.31	own last end caps
.51	own last epoxy
.3	own last filler
.55	own last filters
.31	own last flashing tape
.34	own last flex
.75	own last foam
.4	own last glue
-.24	own last gray
.44	own last hangers
.62	own last hinges
.82	own last kit
.48	own last knobs
.32	own last mastic
.46	own last mesh
.38	own last mesh tape
.4	own last mortar
.4	own last mud
.44	own last panels
.34	own last pins
.31	own last pipe
-.27	own last please
.45	own last plugs
.49	own last ply
.52	own last poly
-.27	own last primer
.27	own last rapid set
.52	own last screw
.54	own last screws
.41	own last sealant
.41	own last sealer
.32	own last shims
.35	own last silicone
.37	own last structural screws
.58	own last tape
.51	own last thinset
.28	own last tile
.2	own last tiles
.46	own last treads
.67	own last washers
-.33	own last white
.39	own last wood filler
-.46	own of false article
.24	own of false count
-.15	own of false pack
.63	own of false volume
.59	own of true area
.07	own of true count
.54	own of true length
.55	own of true pack
.4	own of true volume
.55	own of true weight
.42	own plural
.36	own pointing false
-.82	own pointing true
.34	own true
.65	own unit area
-.46	own unit article
.23	own unit count
.54	own unit length
.39	own unit pack
.47	own unit volume
.55	own unit weight
.12	own verb
.31	own words 1
.27	own words 2
.39	own words 3
.7	own words 4
-.12	place -
.37	place here
-.24	place rest
-.07	place subject
-.11	plural false area true
-.11	plural false article -
.02	plural false count false
-.45	plural false count true
.15	plural false length false
-.13	plural false length true
.16	plural false pack -
-.22	plural false pack false
-.19	plural false pack true
.16	plural false pointer -
-.16	plural false volume false
-.46	plural false volume true
-.6	plural false weight false
-.54	plural false weight true
-.53	plural true area true
.26	plural true article -
-.17	plural true count false
.3	plural true count true
-.42	plural true length true
-.16	plural true pack -
-.2	plural true pack false
-.04	plural true pack true
.07	plural true pointer -
-.06	plural true volume false
.08	plural true volume true
.27	plural true weight false
.54	plural true weight true
-.36	pointing false
.82	pointing true
.17	ran out
.39	rank 0
.21	rank 0 article
.38	rank 0 count
.48	rank 0 pointer
.03	rank 1
.15	rank 1 article
.68	rank 1 pointer
-.06	rank 2
.25	rank 2 article
-.08	rank 2 count
-.56	rank 2 pointer
-.2	rank 3
-.31	rank 3 article
-.19	rank 3 count
-.63	rank 3 pointer
-.13	rank 4
-.15	rank 4 article
-.13	rank 4 count
-.45	rank 4 pointer
-.17	rank 5
-.63	rank 5 article
-.15	rank 5 count
-.41	rank 5 pointer
-.34	rank 6
-1.09	rank 6 article
-.29	rank 6 count
-.81	rank 6 pointer
-.07	said copula
-.21	said imperative
-.3	said modal
-.03	said none
-.19	said owed
.07	said past
-.08	said present
.08	same unit
.39	sentences 0
-.48	sentences 1
-.32	sentences 2
-.23	sentences 3
-.18	sized
1.04	sold so
-.09	the
.05	told 1
-.28	told 1 area
-.93	told 1 article
.24	told 1 count
-.31	told 1 length
-.12	told 1 pack
.09	told 1 pointer
.11	told 1 volume
.22	told 1 weight
-.19	told 2
-.59	told 2 article
-.31	told 2 count
-.06	told 2 length
.12	told 2 pack
-.65	told 2 pointer
-.45	told 2 volume
.1	told 3
.1	told 3 count
.1	told 3 pack
.08	told before
-.04	told by false
.08	told by true
-.37	told here
.32	touches false
.35	touches true
-.14	use buy
.11	use have
.23	use use
-.32	words 1
.03	words 2
.4	words 3
-.09	words 4
`;

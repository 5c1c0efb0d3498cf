package draft

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/draft/lining"
	"ellwand/draft/part"
	"ellwand/pieces/seams"
)

func TestPartsRefused(t *testing.T) {
	reduce := -3.
	for want, change := range map[string]func(*Request){
		"flat collar: a depth of 20 cm is more than the shoulder has room for; ask for " +
			"11.9 cm or less": func(r *Request) {
			r.Parts = []part.Options{{Kind: part.FlatCollar,
				Depth: 200}}
		},
		"armhole facing front: a depth of 20 cm is more than the side and the shoulder have room for beside " +
			"the armhole": func(r *Request) { r.Parts = []part.Options{{Kind: part.ArmholeFacing, Depth: 200}} },
		"shirt collar: a depth of 3 cm does not cover the seam of a stand of 3 cm; ask for " +
			"3.8 cm or more": func(r *Request) { r.Parts = []part.Options{{Kind: part.ShirtCollar, Depth: 30}} },
		`sleeve elbow facing: the sleeve has no edge "elbow"; its edges are: wrist hem, front underarm`: func(r *Request) {
			r.Parts = []part.Options{{Kind: part.Facing, Of: "sleeve", FacedEdge: seams.Called("elbow")}}
		},
		`there is no piece "skirt"; the pieces drafted before it are: front bodice, back bodice, sleeve`: func(r *Request) {
			r.Parts = []part.Options{{Kind: part.Facing, Of: "skirt", FacedEdge: seams.Waist}}
		},
		"facing: name the piece that it is of and the edge " +
			"that it faces": func(r *Request) { r.Parts = []part.Options{{Kind: part.Facing}} },
		"pocket bag: there is no front skirt with a side seam " +
			"to hang it in": func(r *Request) { r.Parts = []part.Options{{Kind: part.PocketBag}} },
		"sleeve placket: a slit of 50 cm is too long for an " +
			"underarm seam of": func(r *Request) { r.Parts = []part.Options{{Kind: part.SleevePlacket, Length: 500}} },
		"bias strip: the length is missing: give the length of all " +
			"strips joined": func(r *Request) { r.Parts = []part.Options{{Kind: part.BiasStrip}} },
		`patch pocket: there is no shape "oval" for its lower edge; use one of: square, pointed, round`: func(r *Request) {
			r.Parts = []part.Options{{Kind: part.PatchPocket, Shape: "oval"}}
		},
		`lining: there is no piece "collars"; the pieces are front bodice, back bodice, sleeve`: func(r *Request) {
			r.Parts, r.Linings = nil, []Lining{{Of: []string{"collars"}}}
		},
		"lining: it is -2 cm shorter than the shell; that cannot be negative": func(r *Request) {
			r.Linings = []Lining{{Of: []string{"sleeve"}, Options: lining.Options{Shorter: -20}}}
		},
		"sleeve lining: 60 cm shorter is more than its shortest edge beside the hem": func(r *Request) {
			r.Parts, r.Linings = nil, []Lining{{Of: []string{"sleeve"}, Options: lining.Options{Shorter: 600}}}
		},
		"interfacing: each allowance is reduced by -0.3 cm; that cannot " +
			"be negative": func(r *Request) { r.Interfacings[0].Reduce = &reduce },
	} {
		request := shirt(size(t, "women", "12"))
		request.Linings, request.Interfacings[1].Of = nil, []string{"sleeve"}
		change(&request)
		if len(request.Parts) == 0 || request.Parts[0].Kind != part.ShirtCollar || len(request.Parts) == 1 {
			request.Interfacings = nil
		}
		_, err := Draft(request)
		assert.ErrorContains(t, err, want)
	}
}

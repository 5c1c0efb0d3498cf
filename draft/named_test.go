package draft

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft/bodice"
	"ellwand/draft/sleeve"
	"ellwand/pieces"
	"ellwand/pieces/measure"
)

// A lining loses no panel of a piece that is cut in several.
func TestLiningOfWhatHasBecomeSeveralPieces(t *testing.T) {
	princess := bodice.Options{Princess: bodice.FromShoulder}
	tests := []struct {
		name string
		of   []string
		make func(*Request)
		want []string
	}{
		{"princess", []string{"front bodice", "back bodice"}, func(r *Request) { r.Bodice = &princess },
			[]string{"front bodice lining", "side front bodice lining", "back bodice lining",
				"side back bodice lining"}},
		{"each once", []string{"side front bodice", "front bodice", "back bodice"},
			func(r *Request) { r.Bodice = &princess },
			[]string{"front bodice lining", "side front bodice lining", "back bodice lining", "side back bodice lining"}},
		{"one panel", []string{"middle front bodice", "side back bodice"}, func(r *Request) { r.Bodice = &princess },
			[]string{"front bodice lining", "side back bodice lining"}},
		{"sleeve", []string{"sleeve"}, func(r *Request) {
			r.Bodice, r.Sleeve = &bodice.Options{Fit: bodice.Easy}, &sleeve.Options{Style: sleeve.TwoPiece}
		}, []string{"top sleeve lining", "under sleeve lining"}},
		{"yoke", []string{"back bodice"}, func(r *Request) {
			r.Bodice = &bodice.Options{Fit: bodice.Shirt, Yoke: 80, Shaping: bodice.NoDart, BackOnFold: true}
		}, []string{"back bodice lining", "yoke lining"}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			request := blouse(size(t, "women", "14"))
			request.Sleeve = nil
			tt.make(&request)
			request.Linings = []Lining{{Of: tt.of, Cloth: "lining"}}
			result, err := Draft(request)
			require.NoError(t, err)
			var made []string
			for _, piece := range result.Pieces {
				if piece.Kind == pieces.Lining {
					made = append(made, piece.Name)
				}
			}
			assert.ElementsMatch(t, tt.want, made)
		})
	}
}

// A cap has no wrist to be warned of.
func TestOnlyAFullSleeveIsWarnedOfItsWrist(t *testing.T) {
	for _, tt := range []struct {
		options sleeve.Options
		warned  bool
	}{
		{sleeve.Options{WristWidth: 160}, true},
		{sleeve.Options{Style: sleeve.Cap}, false},
	} {
		request := blouse(size(t, "women", "14"))
		request.Sleeve, request.Parts = &tt.options, nil
		request.Body[WristGirth] = 250
		result, err := Draft(request)
		require.NoError(t, err)
		said := ""
		for _, warning := range result.Warnings {
			said += warning.In(measure.Centimetre)
		}
		assert.Equal(t, tt.warned, strings.Contains(said, "wide at the wrist"), "%+v", tt.options)
		delete(request.Body, WristGirth)
		result, err = Draft(request)
		require.NoError(t, err)
		_, taken := result.Body[WristGirth]
		assert.Equal(t, tt.warned, taken, "nor is one derived for it: %+v", tt.options)
	}
}

package steps

import (
	"bytes"
	"flag"
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft"
	"ellwand/draft/bodice"
	"ellwand/draft/lining"
	"ellwand/draft/part"
	"ellwand/draft/sleeve"
	"ellwand/pieces/measure"
)

var update = flag.Bool("update", false, "write the golden files anew")

// The draft sheet of a shirt with a stand collar and cuffs that button.
func TestSheetOfAShirt(t *testing.T) {
	body, err := draft.Size("women", "12")
	require.NoError(t, err)
	result, err := draft.Draft(draft.Request{
		Garment: "shirt", Cloth: "shell", Body: body,
		Bodice: &bodice.Options{Fit: bodice.Easy, FrontOpening: true, BackOnFold: true, BelowWaist: 260},
		Sleeve: &sleeve.Options{Style: sleeve.Shirt, WristWidth: 260},
		Parts: []part.Options{{Kind: part.ShirtCollar}, {Kind: part.ButtonedCuff}, {Kind: part.SleevePlacket},
			{Kind: part.ArmholeFacing}, {Kind: part.FlatCollar}},
		Linings: []draft.Lining{{Of: []string{"back bodice"}, Cloth: "lining",
			Options: lining.Options{Shorter: 20, BackPleat: 20}}},
		Interfacings: []draft.Interfacing{{Of: []string{"shirt collar"}, Cloth: "interfacing",
			Interfacing: lining.Interfacing{Cut: 1}}},
	})
	require.NoError(t, err)
	// The parts alone: other tests draw bodice and sleeve from their words.
	shirt := Garment{Name: "shirt", Sheets: result.Sheets}
	for _, p := range result.Pieces {
		if p.Name != "front bodice" && p.Name != "back bodice" && p.Name != "sleeve" {
			shirt.Pieces = append(shirt.Pieces, p)
		}
	}
	var got bytes.Buffer
	require.NoError(t, WriteText(&got, Document{Title: "Shirt", Unit: measure.Centimetre, Garments: []Garment{shirt}}))
	const golden = "testdata/shirt.txt"
	if *update {
		require.NoError(t, os.MkdirAll("testdata", 0o755))
		require.NoError(t, os.WriteFile(golden, got.Bytes(), 0o644))
	}
	want, err := os.ReadFile(golden)
	require.NoError(t, err)
	assert.Equal(t, string(want), got.String())
}

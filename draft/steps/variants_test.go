package steps

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"ellwand/draft"
	"ellwand/draft/bodice"
	"ellwand/draft/lining"
	"ellwand/draft/part"
	"ellwand/draft/skirt"
	"ellwand/draft/sleeve"
	"ellwand/draft/straightcut"
	"ellwand/draft/trousers"
)

// everything is a garment of every block, in each of its variants.
func everything(t testing.TB) map[string]Garment {
	requests := map[string]draft.Request{
		"blouse": {Bodice: &bodice.Options{Fit: bodice.Easy}, Sleeve: &sleeve.Options{}, Parts: kinds(part.Collar, part.Cuff, part.NeckFacing)},
		"dress": {Bodice: &bodice.Options{Shaping: bodice.ShoulderDart}, Skirt: &skirt.Options{Shape: skirt.ALine}, Parts: []part.Options{
			{Kind: part.PocketBag}, {Kind: part.FlatCollar}, {Kind: part.Facing, Of: "front skirt", FacedEdge: "waist"}}},
		"shirt": {
			Bodice: &bodice.Options{FrontOpening: true, BackOnFold: true, BelowWaist: 280, Fit: bodice.Shirt, Yoke: 80, Shaping: bodice.NoDart},
			Sleeve: &sleeve.Options{Style: sleeve.Shirt}, Parts: kinds(part.ShirtCollar, part.MandarinCollar, part.ButtonedCuff, part.SleevePlacket, part.FlatCollar, part.ArmholeFacing),
			Linings:      []draft.Lining{{Of: []string{"back bodice", "front bodice", "sleeve"}, Options: lining.Options{Shorter: 20, BackPleat: 20}}},
			Interfacings: []draft.Interfacing{{Of: []string{"shirt collar"}, Interfacing: lining.Interfacing{Cut: 1}}},
		},
		"small parts": {Parts: []part.Options{
			{Kind: part.Belt}, {Kind: part.Tie, Length: 900}, {Kind: part.PatchPocket, Shape: part.Round, Name: "round"}, {Kind: part.PatchPocket, Shape: part.Pointed, Name: "pointed"},
			{Kind: part.BiasStrip, Length: 2000}, {Kind: part.GatheredSkirt, Depth: 600}, {Kind: part.StraightPanel, Length: 200, Depth: 300}}},
	}
	for shaping := bodice.SideDart; shaping <= bodice.NoDart; shaping++ {
		for fit := bodice.Close; fit <= bodice.Shirt; fit++ {
			o := bodice.Options{Shaping: shaping, Fit: fit, NeckWiden: 10 * float64(fit), FrontNeckDrop: 15 * float64(shaping)}
			requests[fmt.Sprintf("bodice fit %d dart %d", fit, shaping)] = draft.Request{Bodice: &o}
			long := o
			long.BelowWaist = 300
			requests[fmt.Sprintf("long bodice fit %d dart %d", fit, shaping)] = draft.Request{Bodice: &long}
		}
	}
	requests["proportional"] = draft.Request{Bodice: &bodice.Options{Method: bodice.Proportional}, Sleeve: &sleeve.Options{}, Parts: kinds(part.Collar, part.NeckFacing)}
	requests["proportional, armhole dart"] = draft.Request{Bodice: &bodice.Options{Method: bodice.Proportional, Shaping: bodice.ArmholeDart, BackOnFold: true, FrontOpening: true}}
	for _, princess := range []bodice.Princess{bodice.FromShoulder, bodice.FromArmhole} {
		requests[fmt.Sprintf("princess %d", princess)] = draft.Request{Bodice: &bodice.Options{Princess: princess}}
		requests[fmt.Sprintf("long princess %d", princess)] = draft.Request{Bodice: &bodice.Options{Princess: princess, BelowWaist: 600, FrontOpening: true}}
	}
	for i, o := range []sleeve.Options{{Style: sleeve.TwoPiece}, {Style: sleeve.Cap}, {Reach: sleeve.Short, HeadFullness: 1.4}, {HemFullness: 1.5}, {Reach: sleeve.Elbow}} {
		requests[fmt.Sprintf("sleeve %d", i)] = draft.Request{Bodice: &bodice.Options{}, Sleeve: &o}
	}
	for shape := skirt.Straight; shape <= skirt.BoxPleated; shape++ {
		requests[fmt.Sprintf("skirt %d", shape)] = draft.Request{Skirt: &skirt.Options{Shape: shape}, Parts: kinds(part.ShapedWaistband)}
	}
	requests["skirt with a vent"] = draft.Request{Skirt: &skirt.Options{Vent: true}, Parts: kinds(part.Waistband)}
	requests["circle in panels"] = draft.Request{Skirt: &skirt.Options{Shape: skirt.FullCircle, PanelWidth: 1000}}
	for pocket := trousers.NoPocket; pocket <= trousers.PatchPocket; pocket++ {
		requests[fmt.Sprintf("trousers %d", pocket)] = draft.Request{Trousers: &trousers.Options{Pocket: pocket}}
		requests[fmt.Sprintf("shorts %d", pocket)] = draft.Request{Trousers: &trousers.Options{Pocket: pocket, Length: 480, Opening: trousers.SideZip}}
	}
	for shape := straightcut.Kaftan; shape <= straightcut.Bag; shape++ {
		requests[fmt.Sprintf("straight cut %d", shape)] = draft.Request{StraightCut: &straightcut.Options{Shape: shape}}
	}
	requests["flat bag"] = draft.Request{StraightCut: &straightcut.Options{Shape: straightcut.Bag, Flat: true}}
	return draftAll(t, requests)
}

func kinds(list ...part.Kind) []part.Options {
	var out []part.Options
	for _, kind := range list {
		out = append(out, part.Options{Kind: kind})
	}
	return out
}

func draftAll(t testing.TB, requests map[string]draft.Request) map[string]Garment {
	out := map[string]Garment{}
	for name, request := range requests {
		for _, size := range []string{"12", "20"} {
			body, err := draft.Size("women", size)
			require.NoError(t, err)
			request.Garment, request.Body, request.Cloth = name, body, "shell"
			result, err := draft.Draft(request)
			require.NoError(t, err, name)
			out[name+" "+size] = Garment{Name: name, Body: result.Body, Pieces: result.Pieces, Sheets: result.Sheets, Truing: result.Truing}
		}
	}
	return out
}

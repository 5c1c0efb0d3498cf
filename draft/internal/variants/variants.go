// Package variants asks for every block in each of its variants, for tests that
// hold for all of them. The requests have no body.
package variants

import (
	"fmt"

	"ellwand/draft"
	"ellwand/draft/bodice"
	"ellwand/draft/lining"
	"ellwand/draft/part"
	"ellwand/draft/skirt"
	"ellwand/draft/sleeve"
	"ellwand/draft/straightcut"
	"ellwand/draft/trousers"
	"ellwand/pieces/seams"
)

// All is a garment of every block, in each of its variants, by a name.
func All() map[string]draft.Request {
	all := map[string]draft.Request{}
	for _, group := range []map[string]draft.Request{whole(), bodices(), sleeves(), lower()} {
		for name, request := range group {
			request.Garment, request.Cloth = name, "shell"
			all[name] = request
		}
	}
	return all
}

// whole are garments of several blocks, and parts by themselves.
func whole() map[string]draft.Request {
	return map[string]draft.Request{
		"blouse": {Bodice: &bodice.Options{Fit: bodice.Easy}, Sleeve: &sleeve.Options{},
			Parts: kinds(part.Collar, part.Cuff, part.NeckFacing)},
		"dress": {Bodice: &bodice.Options{Shaping: bodice.ShoulderDart}, Skirt: &skirt.Options{Shape: skirt.ALine},
			Parts: []part.Options{
				{Kind: part.PocketBag}, {Kind: part.FlatCollar},
				{Kind: part.Facing, Of: "front skirt", FacedEdge: seams.Waist}}},
		"top": {Bodice: &bodice.Options{NeckWiden: 20, FrontNeckDrop: 40}, Parts: kinds(part.CombinedFacing)},
		"back top": {Bodice: &bodice.Options{BackOpening: true, Shaping: bodice.ShoulderDart},
			Parts: kinds(part.CombinedFacing, part.ShirtCollar)},
		"shift": {Bodice: &bodice.Options{Princess: bodice.FromArmhole, BelowWaist: 600},
			Parts: kinds(part.CombinedFacing)},
		"shirt": {
			Bodice: &bodice.Options{FrontOpening: true, BackOnFold: true, BelowWaist: 280, Fit: bodice.Shirt, Yoke: 80,
				Shaping: bodice.NoDart},
			Sleeve: &sleeve.Options{Style: sleeve.Shirt},
			Parts: kinds(part.ShirtCollar, part.MandarinCollar, part.ButtonedCuff, part.SleevePlacket,
				part.FlatCollar, part.ArmholeFacing),
			Linings: []draft.Lining{{Of: []string{"back bodice", "front bodice", "sleeve"},
				Options: lining.Options{Shorter: 20, BackPleat: 20}}},
			Interfacings: []draft.Interfacing{{Of: []string{"shirt collar"}, Interfacing: lining.Interfacing{Cut: 1}}},
		},
		"small parts": {Parts: []part.Options{
			{Kind: part.Belt}, {Kind: part.Tie, Length: 900}, {Kind: part.PatchPocket, Shape: part.Round,
				Name: "round"}, {Kind: part.PatchPocket, Shape: part.Pointed, Name: "pointed"},
			{Kind: part.BiasStrip, Length: 2000}, {Kind: part.GatheredSkirt, Depth: 600},
			{Kind: part.StraightPanel, Length: 200, Depth: 300}}},
	}
}

func bodices() map[string]draft.Request {
	list := map[string]draft.Request{}
	add := func(name string, o bodice.Options) { list[name] = draft.Request{Bodice: &o} }
	for shaping := bodice.SideDart; shaping <= bodice.NoDart; shaping++ {
		for fit := bodice.Close; fit <= bodice.Shirt; fit++ {
			o := bodice.Options{Shaping: shaping, Fit: fit, NeckWiden: 10 * float64(fit),
				FrontNeckDrop: 15 * float64(shaping)}
			add(fmt.Sprintf("bodice fit %d dart %d", fit, shaping), o)
			o.BelowWaist = 320
			add(fmt.Sprintf("long bodice fit %d dart %d", fit, shaping), o)
		}
	}
	for _, princess := range []bodice.Princess{bodice.FromShoulder, bodice.FromArmhole} {
		add(fmt.Sprintf("princess %d", princess), bodice.Options{Princess: princess})
		add(fmt.Sprintf("long princess %d", princess),
			bodice.Options{Princess: princess, BelowWaist: 600, FrontOpening: true})
	}
	add("back opening", bodice.Options{BackOpening: true, Fit: bodice.Easy})
	add("proportional", bodice.Options{Method: bodice.Proportional})
	add("proportional, armhole dart", bodice.Options{Method: bodice.Proportional, Shaping: bodice.ArmholeDart,
		BackOnFold: true, FrontOpening: true})
	return list
}

func sleeves() map[string]draft.Request {
	list := map[string]draft.Request{}
	for name, o := range map[string]sleeve.Options{
		"two-piece": {Style: sleeve.TwoPiece}, "cap": {Style: sleeve.Cap}, "short gathered": {Reach: sleeve.Short,
			HeadFullness: 1.4},
		"bishop": {HemFullness: 1.5}, "elbow": {Reach: sleeve.Elbow},
	} {
		list[name+" sleeve"] = draft.Request{Bodice: &bodice.Options{}, Sleeve: &o}
	}
	return list
}

// lower are skirts, trousers and straight cuts.
func lower() map[string]draft.Request {
	list := map[string]draft.Request{}
	for shape := skirt.Straight; shape <= skirt.BoxPleated; shape++ {
		list[fmt.Sprintf("skirt %d", shape)] = draft.Request{Skirt: &skirt.Options{Shape: shape},
			Parts: kinds(part.ShapedWaistband)}
	}
	list["skirt with a vent"] = draft.Request{Skirt: &skirt.Options{Vent: true}, Parts: kinds(part.Waistband)}
	list["lined skirt with a vent"] = draft.Request{
		Skirt: &skirt.Options{Vent: true}, Linings: []draft.Lining{{Of: []string{"front skirt", "back skirt"},
			Options: lining.Options{Shorter: 20, BackPleat: 15}}}}
	list["skirt with darts in its hem"] = draft.Request{Skirt: &skirt.Options{Shape: skirt.ALine, DartsIntoHem: true}}
	list["skirt with darts in its hem, flared"] = draft.Request{Skirt: &skirt.Options{Shape: skirt.ALine,
		DartsIntoHem: true, Flare: 30, BackOnFold: true}}
	list["circle in panels"] = draft.Request{Skirt: &skirt.Options{Shape: skirt.FullCircle, PanelWidth: 1000}}
	for pocket := trousers.NoPocket; pocket <= trousers.PatchPocket; pocket++ {
		list[fmt.Sprintf("trousers %d", pocket)] = draft.Request{Trousers: &trousers.Options{Pocket: pocket}}
		list[fmt.Sprintf("shorts %d", pocket)] = draft.Request{Trousers: &trousers.Options{Pocket: pocket, Length: 480,
			Opening: trousers.SideZip}}
	}
	list["elastic shorts"] = draft.Request{Trousers: &trousers.Options{Opening: trousers.ElasticWaist, Length: 480,
		Pocket: trousers.SidePocket, Elastic: 50}}
	lined := []draft.Lining{{Of: []string{"front trousers", "back trousers"}, Options: lining.Options{Shorter: 20}}}
	list["lined trousers"] = draft.Request{Trousers: &trousers.Options{}, Linings: lined}
	list["elastic trousers"] = draft.Request{Trousers: &trousers.Options{Opening: trousers.ElasticWaist},
		Linings: lined}
	for shape := straightcut.Kaftan; shape <= straightcut.Bag; shape++ {
		list[fmt.Sprintf("straight cut %d", shape)] = draft.Request{StraightCut: &straightcut.Options{Shape: shape}}
	}
	list["flat bag"] = draft.Request{StraightCut: &straightcut.Options{Shape: straightcut.Bag, Flat: true}}
	return list
}

func kinds(list ...part.Kind) []part.Options {
	var out []part.Options
	for _, kind := range list {
		out = append(out, part.Options{Kind: kind})
	}
	return out
}

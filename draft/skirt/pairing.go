package skirt

import (
	"ellwand/draft/construct"
	"ellwand/pieces/source"
)

// waistPairing sets the waist seam against the body.
func waistPairing(of string, length float64, f figures) construct.Pairing {
	return construct.Pairing{
		Seam: "waist", Of: of, Length: length, Against: "waist girth", Other: f.Waist,
		Least: min(10, f.WaistEase) - 0.1, Most: max(20, f.WaistEase) + 0.1,
		Normal: construct.Say("1 to 2 cm of ease in a skirt (%s), or the ease that was asked for",
			source.CommonPractice),
	}
}

// hipPairing sets the width on the hip line against the body.
func (f figures) hipPairing(width float64) construct.Pairing {
	return construct.Pairing{
		Seam: "hip line", Of: "width all round", Length: width, Against: "hip girth", Other: f.Hip,
		Least: f.HipEase - construct.Matching, Most: construct.NoLimit,
		Normal: construct.Say("%s of hip ease or more: 3 cm is close in a straight skirt, 5 cm easy (%s; %s)",
			construct.Length(f.HipEase), source.AldrichFromMemory, source.Armstrong),
	}
}

package draft

import "ellwand/draft/straightcut"

// draftStraightCut drafts a garment of rectangles and simple curves.
func (g *garment) draftStraightCut() error {
	b := g.result.Body
	made, err := straightcut.Draft(straightcut.Measures{
		Bust: b[BustGirth], Waist: b[WaistGirth], Hip: b[HipGirth], NeckBase: b[NeckBaseGirth],
		Shoulder:  b[ShoulderLength],
		ScyeDepth: b[ScyeDepth], ShoulderToWrist: b[ShoulderToWrist], UpperArm: b[UpperArmGirth],
	}, *g.StraightCut)
	if err != nil {
		return err
	}
	g.adopt(made.Pieces, made.Sheets, made.Pairings, made.Warnings)
	return nil
}

// straightCutNeeds lists the measurements that a shape is drafted from.
func straightCutNeeds(shape straightcut.Shape) []Measurement {
	switch shape {
	case straightcut.Kaftan, straightcut.Kimono:
		return []Measurement{BustGirth, HipGirth, NeckBaseGirth, ShoulderLength, ScyeDepth, ShoulderToWrist,
			UpperArmGirth}
	case straightcut.Wrapper:
		return []Measurement{HipGirth}
	case straightcut.Apron:
		return []Measurement{WaistGirth, HipGirth}
	}
	return nil
}

package illustration

// optionSketches by option and choice: our own drawings [source.OwnChoice].
var optionSketches = map[string]map[string]sketch{
	"bodice.princess": {
		"none":     fittedBodice(line{{16.8, 50}, {11, 48.6}}, line{{8, 54}, {8, 64}}),
		"shoulder": fittedBodice(line{{12, 26.9}, {10, 40}, {9.2, 50}, {7.4, 64}}),
		"armhole":  fittedBodice(line{{16.6, 37}, {12, 42}, {9.4, 50}, {7.4, 64}}),
	},
	"bodice.dart": {
		"side":     fittedBodice(line{{16.8, 50}, {11, 48.6}}, line{{16.4, 52.4}, {11, 48.6}}),
		"shoulder": fittedBodice(line{{11, 26.5}, {9.6, 46}}, line{{13, 27.3}, {9.6, 46}}),
		"armhole":  fittedBodice(line{{16.4, 36}, {10.4, 47}}, line{{16.4, 38.6}, {10.4, 47}}),
		"none":     fittedBodice(),
	},
	"sleeve.style": {
		"set-in":    sleeved(longSleeve),
		"shirt":     sleeved(wideSleeve, line{{24.8, 72}, {32.8, 70}}),
		"two-piece": sleeved(longSleeve, line{{20, 38}, {26.4, 60}, {29.4, 81}}),
		"cap": sleeved([]line{{{18, 29.4}, {22, 31}, {23.4, 34.6}}, {{23.4, 34.6}, {16.8, 38}},
			{{16.8, 38}, {16, 35}, {18, 29.4}}}),
	},
	"sleeve.reach": {
		"full":  sleeved(longSleeve),
		"elbow": sleeved(elbowSleeve),
		"short": sleeved(shortSleeve),
	},
	"skirt.shape": {
		"straight": skirtOf(line{{13.5, 65}, {18.6, 83}, {18.8, 122}}, line{{18.8, 122}, {0, 123}},
			[]line{{{7, 66}, {8, 77}}}, nil),
		"a-line": skirtOf(line{{13.5, 65}, {19, 84}, {25, 120}}, line{{25, 120}, {12, 123.4}, {0, 124}},
			[]line{{{7, 66}, {8, 75}}}, nil),
		"gored": skirtOf(line{{13.5, 65}, {20, 86}, {27, 119}}, line{{27, 119}, {13, 123.6}, {0, 124.4}},
			[]line{{{4.6, 66}, {6.4, 86}, {9, 124}}}, nil),
		"full circle":          flaring(39, 114, 4),
		"three-quarter circle": flaring(35, 116, 3),
		"half circle":          flaring(31, 118, 2),
		"quarter circle":       flaring(26, 120, 1),
		"tiered": skirtOf(line{{13.5, 65}, {20, 84}, {28, 121}}, line{{28, 121}, {14, 124}, {0, 124.6}},
			[]line{{{0, 82.6}, {19.4, 81.6}}, {{0, 102}, {24, 100.6}}}, gathers),
		"knife pleated": skirtOf(line{{13.5, 65}, {19, 84}, {24, 121}}, line{{24, 121}, {0, 123}},
			[]line{{{2.4, 66}, {4, 123}}, {{5, 66}, {8.4, 122.6}}, {{7.6, 66}, {13, 122.2}}, {{10.4, 66}, {18, 121.8}}}, nil),
		"box pleated": skirtOf(line{{13.5, 65}, {19, 84}, {24, 121}}, line{{24, 121}, {0, 123}},
			[]line{{{4, 66}, {6.4, 123}}, {{9, 66}, {15, 122}}}, []line{{{5.4, 66}, {8.6, 123}}, {{10.4, 66}, {17.4, 122}}}),
	},
}

var elbowSleeve = []line{
	{{18, 29.4}, {23, 33}, {26, 42}, {28, 55}}, {{28, 55}, {21.4, 57}},
	{{21.4, 57}, {19.6, 50}, {17.4, 42}}, {{17.4, 42}, {16, 35}, {18, 29.4}},
}

var gathers = []line{
	{{3, 83}, {3.2, 88}}, {{8, 82.8}, {8.6, 88}}, {{13, 82.4}, {14, 87.6}},
	{{4, 102}, {4.2, 107}}, {{10, 101.6}, {10.6, 107}}, {{17, 101.2}, {18, 106.4}},
}

func fittedBodice(seams ...line) sketch {
	return sketch{
		rims: [][]line{{roundNeck, shoulder, armhole, {{17.4, 42}, {16.8, 50}, {13.4, 64}}, {{13.4, 64}, {0, 65}}}},
		top:  15, low: 74, wide: 23, seams: seams,
	}
}

func sleeved(sleeve []line, seams ...line) sketch {
	s := fittedBodice(seams...)
	s.sleeve, s.low, s.wide = sleeve, 86, 34
	return s
}

func skirtOf(side, hem line, seams, folds []line) sketch {
	return sketch{
		rims: [][]line{{{{0, 66}, {13.5, 65}}, side, hem}, waistband},
		top:  50, low: 132, wide: 28, seams: seams, folds: folds,
	}
}

// flaring is a skirt cut from a part of a circle: the more of it, the more folds.
func flaring(wide, low float64, folds int) sketch {
	var hem line
	steps := 2*folds + 1
	for i := 0; i <= steps; i++ {
		part := float64(i) / float64(steps)
		dip := 3.4
		if i%2 == 0 {
			dip = -1
		}
		hem = append(hem, [2]float64{wide * (1 - part), low + 6*part + dip})
	}
	hem[0] = [2]float64{wide, low}
	s := skirtOf(line{{13.5, 65}, {13.5 + (wide-13.5)*0.42, 86}, {wide, low}}, hem, nil, nil)
	for i := 1; i < len(hem)-1; i += 2 {
		at := hem[i+1]
		top := 13 * at[0] / wide
		s.folds = append(s.folds, line{{top, 66.6}, {(top + at[0]) / 2.1, 90}, {at[0], at[1]}})
	}
	s.wide = 40
	return s
}

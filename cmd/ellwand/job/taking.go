package job

// taking says of each measurement how it is taken: the ways of the standard, in
// our words [source.ISO8559].
var taking = map[string]string{
	"height":      "standing against a wall, from the crown of the head to the floor, without shoes",
	"bust_girth":  "horizontally round the fullest part of the bust",
	"waist_girth": "round the natural waist, where the cord has settled",
	"hip_girth":   "horizontally round the fullest part of the seat",
	"neck_base_girth": "round the base of the neck: over the bone at the nape, along the sides where a " +
		"necklace lies, to the pit of the throat",
	"back_neck_point_to_waist": "from the bone at the nape (bend the head: it stands out) down the middle of the back " +
		"to the waist cord",
	"shoulder_length":    "from the side of the neck base along the shoulder to the bone at its end",
	"across_back_width":  "across the shoulder blades, from arm crease to arm crease, arms hanging",
	"across_front_width": "across the chest above the bust, from arm crease to arm crease",
	"scye_depth": "from the bone at the nape straight down to the level of the underarm; a ruler held " +
		"level under the arm shows it",
	"shoulder_to_wrist":  "from the bone at the end of the shoulder, over the bent elbow, to the wrist bone",
	"upper_arm_girth":    "round the fullest part of the upper arm, arm hanging",
	"wrist_girth":        "round the wrist, over the bone",
	"waist_to_hip":       "down the side, from the waist cord to the level of the hip girth",
	"body_rise":          "sitting upright on a hard chair: at the side, from the waist cord to the seat",
	"inside_leg_length":  "standing, from the crotch to the floor, without shoes",
	"outside_leg_length": "standing, from the waist cord over the hip to the floor, at the side",
}

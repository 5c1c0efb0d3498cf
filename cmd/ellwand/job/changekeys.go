package job

import "ellwand/pieces/found"

// Change is what is otherwise of a piece of a pattern than its file says.
type Change struct {
	Of        Text               `yaml:"of" jsonschema:"required" jsonschema_description:"piece of the pattern, by the name that its file has"`
	Name      Text               `yaml:"name" jsonschema_description:"what it is called here"`
	Cut       Count              `yaml:"cut" jsonschema_description:"how many are cut for one garment"`
	Pair      YesNo              `yaml:"pair" jsonschema_description:"half of them mirrored: one right, one left; yes for an even number of a piece that is not its own mirror image, if cut is given"`
	Fold      Choice[found.Side] `yaml:"fold" jsonschema_description:"the side of the piece as it is drawn whose straight edge lies on the fold; as found if not given"`
	Grain     Choice[found.Lie]  `yaml:"grain" jsonschema_description:"how the grainline runs in the piece as it is drawn; as found if not given"`
	Allowance Text               `yaml:"allowance" jsonschema_description:"what the outline has of it: 1.5 cm (it is added to the outline), add (the job's is added), included 1.5 cm, or unknown"`
}

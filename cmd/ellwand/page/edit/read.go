package edit

import "go.yaml.in/yaml/v3"

// Tree is a text as maps, lists and texts, each text as it is written: 24.50 stays so. It is
// nil of a text that is no YAML.
func Tree(text string) any {
	var tree any
	var written yaml.Node
	if yaml.Unmarshal([]byte(text), &tree) != nil || yaml.Unmarshal([]byte(text), &written) != nil {
		return nil
	}
	out := texts(tree)
	if len(written.Content) == 0 {
		return out
	}
	return asWritten(out, written.Content[0])
}

// asWritten gives the texts of a tree as a node has them; what the node does not have, as a
// key that is merged in, stays as it is.
func asWritten(tree any, node *yaml.Node) any {
	if node.Kind == yaml.AliasNode {
		node = node.Alias
	}
	switch t := tree.(type) {
	case map[string]any:
		for i := 0; node.Kind == yaml.MappingNode && i+1 < len(node.Content); i += 2 {
			if value, is := t[node.Content[i].Value]; is {
				t[node.Content[i].Value] = asWritten(value, node.Content[i+1])
			}
		}
	case []any:
		for i := 0; node.Kind == yaml.SequenceNode && i < min(len(t), len(node.Content)); i++ {
			t[i] = asWritten(t[i], node.Content[i])
		}
	case string:
		if node.Kind == yaml.ScalarNode {
			return node.Value
		}
	}
	return tree
}
